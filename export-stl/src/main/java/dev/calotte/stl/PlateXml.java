package dev.calotte.stl;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The elements of a model part as they begin; neither document types nor entities are followed. */
final class PlateXml {

    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private static final int MOST_DEPTH = 64;

    private final XMLStreamReader xml;
    private int depth;

    PlateXml(InputStream in) throws IOException {
        // that of the JDK, whatever else is on the class path
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            // the parser's own decoder prints what it does not like
            xml = factory.createXMLStreamReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
        } catch (XMLStreamException | RuntimeException e) {
            throw notXml(e, 1);
        }
    }

    /** Goes to where the next element of the core specification begins; false at the end of the part. */
    boolean next() throws IOException {
        int event = event();
        while (event != XMLStreamConstants.END_DOCUMENT && !(event == XMLStreamConstants.START_ELEMENT && isCore())) {
            event = event();
        }
        return event == XMLStreamConstants.START_ELEMENT;
    }

    private boolean isCore() {
        return CORE.equals(xml.getNamespaceURI());
    }

    private int event() throws IOException {
        int event = advanced();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw wrong("it has a document type or an entity of its own");
        }
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        if (depth > MOST_DEPTH) {
            throw wrong("there are more than " + MOST_DEPTH + " elements inside each other");
        }
        return event;
    }

    /** The parser of the JDK has, for some files that are no XML, exceptions of its own besides the promised one. */
    private int advanced() throws IOException {
        try {
            return xml.next();
        } catch (XMLStreamException | RuntimeException e) {
            throw notXml(e, xml.getLocation().getLineNumber());
        }
    }

    private static IOException notXml(Exception e, int line) {
        Throwable cause = e instanceof XMLStreamException stream ? stream.getNestedException() : e;
        boolean readable = cause instanceof IOException
                && cause.getMessage() != null
                && !(cause instanceof CharacterCodingException);
        return readable
                ? (IOException) cause
                : new IOException("line " + Math.max(1, line) + " of its model: this is no XML that could be read", e);
    }

    /** The name of the element that has just begun. */
    String name() {
        return xml.getLocalName();
    }

    Optional<String> attribute(String name) {
        return Optional.ofNullable(xml.getAttributeValue(null, name));
    }

    /** The text right behind the beginning of the element, up to the next one. */
    String text() throws IOException {
        StringBuilder text = new StringBuilder();
        int event = event();
        while (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.SPACE) {
            text.append(xml.getText());
            event = event();
        }
        if (event != XMLStreamConstants.END_ELEMENT) {
            throw wrong("metadata holds text alone");
        }
        return text.toString();
    }

    /** A whole number from 0 to below a limit. */
    int whole(String name, int limit) throws IOException {
        String text = attribute(name).orElse("");
        boolean digits = text.length() > 0 && text.length() < 10 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        int value = digits ? Integer.parseInt(text) : -1;
        if (value < 0 || value >= limit) {
            throw wrong("the attribute " + name + " of " + name() + " is no number below " + limit);
        }
        return value;
    }

    /** A number times another, which single precision can hold. */
    float number(String name, double times) throws IOException {
        String text = attribute(name).orElse("");
        boolean plain = text.length() < 64 && text.chars().allMatch(c -> "+-.eE0123456789".indexOf(c) >= 0);
        float value = (float) (times * (plain ? parsed(text) : Double.NaN));
        if (!Float.isFinite(value)) {
            throw wrong("the attribute " + name + " of " + name() + " is no number that single precision can hold");
        }
        return value;
    }

    private static double parsed(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    IOException wrong(String reason) {
        return new IOException("line " + Math.max(1, xml.getLocation().getLineNumber()) + " of its model: " + reason);
    }
}
