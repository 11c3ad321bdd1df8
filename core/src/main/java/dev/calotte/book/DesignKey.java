package dev.calotte.book;

import dev.calotte.dome.Measures;
import dev.calotte.units.NumberText;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.zip.CRC32;

/** What tells one design from another, so that ticks of one are not taken for those of the next. */
final class DesignKey {

    private DesignKey() {}

    /** Two check sums of all that decides what is built, as 16 hexadecimal digits. */
    static String of(Matter matter) {
        Measures m = matter.subject().parts().dome().measures();
        String design = matter.source()
                + '\n'
                + matter.subject().parts().dome().spec()
                + '\n'
                + NumberText.fixed(m.radiusMm(), 6);
        return sum(design) + sum(new StringBuilder(design).reverse().toString());
    }

    private static String sum(String text) {
        CRC32 crc = new CRC32();
        crc.update(text.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().toHexDigits((int) crc.getValue());
    }
}
