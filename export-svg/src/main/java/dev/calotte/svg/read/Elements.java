package dev.calotte.svg.read;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The elements of a file as they begin and end; neither document types nor entities are followed. */
final class Elements {

    private static final long MOST_BYTES = 1L << 25;
    private static final int MOST_DEPTH = 64;
    /** Bytes in which a file says how it is encoded. */
    private static final int HEAD = 200;

    private static final String BYTE_ORDER_MARK = "\u00ef\u00bb\u00bf";
    private static final Pattern OTHER_ENCODING = Pattern.compile(
            "\\xfe\\xff|\\xff\\xfe|\\x00|.\\x00|<\\?xml[^>]*encoding\\s*=\\s*[\"'](?!utf-?8[\"'])",
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final String SVG = "http://www.w3.org/2000/svg";

    private final XMLStreamReader xml;
    private int depth;

    Elements(InputStream in) throws IOException {
        // that of the JDK, whatever else is on the class path
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            xml = open(factory, new BufferedInputStream(new Bounded(in)));
        } catch (XMLStreamException | RuntimeException e) {
            throw notXml(e, 1);
        }
    }

    /** The JDK's parser prints what it finds wrong in UTF-8, so that is read here; other encodings, which say so, by it. */
    private static XMLStreamReader open(XMLInputFactory factory, BufferedInputStream in)
            throws IOException, XMLStreamException {
        in.mark(HEAD);
        String head = new String(in.readNBytes(HEAD), StandardCharsets.ISO_8859_1);
        in.reset();
        if (OTHER_ENCODING.matcher(head).lookingAt()) {
            return factory.createXMLStreamReader(in);
        }
        in.skipNBytes(head.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK.length() : 0);
        return factory.createXMLStreamReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
    }

    /** Stops at a length that no file should have. */
    private static final class Bounded extends FilterInputStream {

        private long bytes;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int next = super.read();
            count(next < 0 ? 0 : 1);
            return next;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            count(Math.max(read, 0));
            return read;
        }

        private void count(int more) throws IOException {
            bytes += more;
            if (bytes > MOST_BYTES) {
                throw new IOException("the file is larger than " + (MOST_BYTES >> 20) + " MiB");
            }
        }
    }

    /** Goes to where the next element begins, true, or the one that is open ends, false. */
    boolean begins() throws IOException {
        int event = event();
        while (event != XMLStreamConstants.START_ELEMENT && event != XMLStreamConstants.END_ELEMENT) {
            event = event();
        }
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : -1;
        if (depth > MOST_DEPTH) {
            throw wrong("there are more than " + MOST_DEPTH + " elements inside each other");
        }
        return event == XMLStreamConstants.START_ELEMENT;
    }

    private int event() throws IOException {
        int event = next();
        if (event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw wrong("the entity " + xml.getLocalName() + " is not known");
        }
        return event;
    }

    /** The parser of the JDK has, for some files that are no XML, exceptions of its own besides the promised one. */
    private int next() throws IOException {
        try {
            return xml.next();
        } catch (XMLStreamException | RuntimeException e) {
            throw notXml(e, line());
        }
    }

    private static IOException notXml(Exception e, int line) {
        Throwable cause = e instanceof XMLStreamException stream ? stream.getNestedException() : e;
        if (cause instanceof CharacterCodingException) {
            return new SvgFormatException(Math.max(1, line), "a character there is not in UTF-8");
        }
        return cause instanceof IOException io && io.getMessage() != null
                ? io
                : new SvgFormatException(Math.max(1, line), "this is no XML that could be read");
    }

    /** How many elements are open. */
    int depth() {
        return depth;
    }

    /** The name of an element of SVG that has just begun; nothing for those of others. */
    Optional<String> svgName() {
        return SVG.equals(xml.getNamespaceURI()) ? Optional.of(xml.getLocalName()) : Optional.empty();
    }

    /** An attribute of the element that has just begun, by its name without prefix. */
    Optional<String> attribute(String name) {
        return Optional.ofNullable(xml.getAttributeValue("", name))
                .or(() -> Optional.ofNullable(xml.getAttributeValue(null, name)));
    }

    /** Passes over the element that has just begun, with all that is inside. */
    void skip() throws IOException {
        int end = depth - 1;
        while (depth > end) {
            begins();
        }
    }

    /** The text of the element that has just begun, up to its end, without what is between texts. */
    String text() throws IOException {
        StringBuilder text = new StringBuilder();
        int end = depth - 1;
        while (depth > end) {
            int event = event();
            switch (event) {
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
                    text.append(xml.getText());
                case XMLStreamConstants.START_ELEMENT -> throw wrong("a title holds text alone");
                case XMLStreamConstants.END_ELEMENT -> depth--;
                default -> {}
            }
        }
        return text.toString().strip();
    }

    SvgFormatException wrong(String reason) {
        return new SvgFormatException(Math.max(1, line()), reason);
    }

    private int line() {
        return xml.getLocation().getLineNumber();
    }
}
