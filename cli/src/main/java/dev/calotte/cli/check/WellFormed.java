package dev.calotte.cli.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads XML to its end, without document types, entities of its own, or anything from elsewhere. */
final class WellFormed {

    private WellFormed() {}

    static void check(InputStream in) throws IOException {
        try {
            XMLStreamReader reader = reader(in);
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamReader.DTD) {
                    throw new RecordException("it has a document type, which none of these files has");
                }
            }
            reader.close();
        } catch (XMLStreamException | RuntimeException e) {
            throw notXml(e);
        }
    }

    /** The parser of the JDK has, for some files that are no XML, exceptions of its own besides the promised one. */
    static RecordException notXml(Exception e) {
        boolean placed = e instanceof XMLStreamException stream && stream.getLocation() != null;
        return new RecordException("it is no well-formed XML"
                + (placed ? " in line " + ((XMLStreamException) e).getLocation().getLineNumber() : ""));
    }

    static XMLStreamReader reader(InputStream in) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is read from elsewhere");
        });
        // the parser's own decoder prints what it does not like
        return factory.createXMLStreamReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
    }
}
