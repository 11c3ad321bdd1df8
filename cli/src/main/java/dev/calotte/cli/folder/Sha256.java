package dev.calotte.cli.folder;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest SHA-256 (FIPS 180-4) as 64 hexadecimal digits. */
public final class Sha256 {

    private Sha256() {}

    /**
     * The sum of some bytes.
     *
     * @param bytes any number of bytes
     * @return 64 hexadecimal digits in lower case
     */
    public static String of(byte[] bytes) {
        MessageDigest digest = begun();
        digest.update(bytes);
        return text(digest);
    }

    /**
     * The sum of all that a stream gives.
     *
     * @param in where the bytes come from; left open
     * @return 64 hexadecimal digits in lower case
     * @throws IOException if the stream fails
     */
    public static String of(InputStream in) throws IOException {
        MessageDigest digest = begun();
        byte[] buffer = new byte[1 << 16];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            digest.update(buffer, 0, read);
        }
        return text(digest);
    }

    static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static String text(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
