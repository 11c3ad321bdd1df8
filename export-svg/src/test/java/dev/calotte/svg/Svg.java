package dev.calotte.svg;

import dev.calotte.document.Document;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jsoup.Jsoup;
import org.jsoup.parser.Parser;
import org.xml.sax.SAXException;

/** Reads files back with readers from elsewhere. */
final class Svg {

    private Svg() {}

    /** What jsoup reads, after the strict parser of the JDK has read it without a complaint. */
    static org.jsoup.nodes.Document of(Document document) throws IOException {
        return of(Samples.bytes(document));
    }

    static org.jsoup.nodes.Document of(byte[] bytes) throws IOException {
        strict(bytes);
        return Jsoup.parse(new ByteArrayInputStream(bytes), "UTF-8", "", Parser.xmlParser());
    }

    static org.w3c.dom.Document strict(byte[] bytes) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        } catch (ParserConfigurationException | SAXException wrong) {
            throw new AssertionError(wrong);
        }
    }

    /** The numbers of path data of the commands M, L, A and Z only, with the commands taken out. */
    static List<Double> numbers(String pathData) {
        List<Double> numbers = new ArrayList<>();
        for (String word : pathData.split("[MLAZ ]", -1)) {
            if (!word.isEmpty()) {
                numbers.add(Double.valueOf(word));
            }
        }
        return numbers;
    }
}
