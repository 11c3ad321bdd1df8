package dev.calotte.caution;

/**
 * Something that can hurt people, and whom to ask.
 *
 * @param topic what it concerns, one or two words
 * @param text what to mind, one or two sentences, the first one short
 * @param deferTo who decides: a profession, an authority, a standard by its number
 */
public record Caution(String topic, String text, String deferTo) {

    /**
     * The caution in one short line.
     *
     * @return the topic and the first sentence
     */
    public String line() {
        return topic + ": " + text.substring(0, text.indexOf('.') + 1);
    }
}
