package dev.calotte.cli.check;

import dev.calotte.check.Fault;
import dev.calotte.check.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** That a page is promised at full size as it says: one unit of its drawing is a millimetre of its paper. */
final class PageSize {

    private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern SIDE = Pattern.compile(NUMBER + "mm");
    private static final Pattern BOX = Pattern.compile("0 0 " + NUMBER + " " + NUMBER);
    private static final double PRINTED_MM = 1e-4;

    private PageSize() {}

    static void check(InputStream in, Findings findings) throws IOException {
        try {
            XMLStreamReader reader = WellFormed.reader(in);
            while (reader.hasNext() && reader.next() != XMLStreamReader.START_ELEMENT) {
                // what stands before the root says nothing of its size
            }
            check(side(reader, "width"), side(reader, "height"), side(reader, "viewBox"), findings);
            reader.close();
        } catch (XMLStreamException | RuntimeException e) {
            throw WellFormed.notXml(e);
        }
    }

    private static String side(XMLStreamReader reader, String name) {
        String text = reader.isStartElement() ? reader.getAttributeValue(null, name) : null;
        return text == null ? "" : text;
    }

    private static void check(String width, String height, String viewBox, Findings findings) {
        Matcher across = SIDE.matcher(width);
        Matcher down = SIDE.matcher(height);
        Matcher box = BOX.matcher(viewBox);
        boolean told = across.matches() && down.matches() && box.matches();
        if (!told || !same(across.group(1), box.group(1)) || !same(down.group(1), box.group(2))) {
            findings.add(
                    Fault.SCALED,
                    "",
                    "its page is " + shown(width) + " by " + shown(height) + " for a drawing of the extent "
                            + shown(viewBox) + " mm, so that it is not printed or cut at full size.");
        }
    }

    private static boolean same(String one, String other) {
        return Math.abs(Double.parseDouble(one) - Double.parseDouble(other)) <= PRINTED_MM;
    }

    private static String shown(String text) {
        return text.isEmpty() ? "of no size" : text.substring(0, Math.min(60, text.length()));
    }
}
