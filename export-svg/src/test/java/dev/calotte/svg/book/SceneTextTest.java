package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Scene;
import dev.calotte.document.Scene.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The scene as the script reads it. */
class SceneTextTest {

    @Test
    void whatPiecesShareIsWrittenOnce() {
        Scene scene = new Scene(
                List.of(0.0, -0.01, 1234.56, 1.0, 0.5, 0.0),
                List.of(
                        new Piece("H1-1.01", "H1", 0, List.of(0), "six bolts"),
                        new Piece("H1-2.01", "H1", 0, List.of(1), "six bolts"),
                        new Piece("S1-1.01", "S1", 3, List.of(0, 1), "")));
        assertThat(new SceneText(scene).text()).isEqualTo("""
                        {"xyz":[0,0,1234.6,1,0.5,0],
                        "kinds":[["H1",0],
                        ["S1",3]],
                        "abouts":["six bolts",
                        ""],
                        "pieces":[["H1-1.01",0,0,0],
                        ["H1-2.01",0,0,1],
                        ["S1-1.01",1,1,0,1]]}""");
    }

    /** RFC 8259, section 7; and the end of a script element in HTML. */
    @Test
    void textsAreEscapedForJsonAndForHtml() {
        assertThat(SceneText.quoted("a\"b\\c\n\t</script>&\u2028\u0001\u00e9"))
                .isEqualTo("\"a\\\"b\\\\c\\u000a\\u0009\\u003c/script\\u003e\\u0026\\u2028\ufffd\u00e9\"");
    }
}
