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
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is read from elsewhere");
        });
        try {
            // the parser's own decoder prints what it does not like
            XMLStreamReader reader =
                    factory.createXMLStreamReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamReader.DTD) {
                    throw new RecordException("it has a document type, which none of these files has");
                }
            }
            reader.close();
        } catch (XMLStreamException e) {
            throw new RecordException(
                    "it is no well-formed XML in line " + e.getLocation().getLineNumber());
        }
    }
}
