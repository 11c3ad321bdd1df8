package dev.calotte.svg;

import dev.calotte.document.Picture.Label;
import dev.calotte.svg.paper.Ink;
import dev.calotte.svg.paper.PaperPage;
import java.io.IOException;

/** A page of a template as people print it: each kind of line one path, then the words. */
final class TemplatePage {

    private static final String INK = "#000000";

    private final PaperPage page;

    TemplatePage(PaperPage page) {
        this.page = page;
    }

    void write(Xml xml) throws IOException {
        Frame.open(xml, page.title(), page.size().widthMm(), page.size().heightMm());
        xml.open("g").with("fill", "none").with("stroke", INK).with("stroke-linejoin", "round");
        for (Ink ink : page.inks()) {
            put(xml, ink);
        }
        xml.close();
        xml.open("g").with("font-family", Page.FONT).with("fill", INK);
        for (Label label : page.words()) {
            Page.put(xml, label, page.size().heightMm());
        }
        xml.close().close();
        xml.end();
    }

    private void put(Xml xml, Ink ink) throws IOException {
        PathText text = new PathText(page.size().heightMm());
        ink.chains().forEach(text::chain);
        xml.open("path").with("id", ink.id()).with("d", text.toString());
        xml.with("stroke-width", ink.pen().widthMm());
        if (!ink.pen().dashes().isEmpty()) {
            xml.with("stroke-dasharray", ink.pen().dashes());
        }
        xml.close();
    }
}
