package dev.calotte.book;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.bill.Masses;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Picture;
import dev.calotte.dome.Dome;
import dev.calotte.parts.Parts;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What lies on the desk of whoever writes the chapters: the matter, the drawings, and how numbers are written. */
final class Desk {

    final Matter matter;
    final Parts parts;
    final Dome dome;
    final UnitSystem units;
    final PieceMarks marks;
    final Masses masses;
    private final List<Picture> drawings;

    Desk(Matter matter, List<Picture> drawings) {
        this.matter = matter;
        this.parts = matter.subject().parts();
        this.dome = parts.dome();
        this.units = matter.subject().units();
        this.marks = new PieceMarks(parts);
        this.masses = Masses.of(matter.needs());
        this.drawings = List.copyOf(drawings);
    }

    /** The drawings whose names begin like this. */
    List<Picture> drawings(String name) {
        return drawings.stream()
                .filter(picture -> picture.name().startsWith("drawings/" + name))
                .toList();
    }

    /** The same as figures of their own. */
    List<Block> figures(String name, String caption) {
        return drawings(name).stream()
                .<Block>map(picture -> new Figure(picture, caption, Optional.empty()))
                .toList();
    }

    /** A table with the first of the drawings beside it, if there is one. */
    List<Block> beside(String name, String caption, Table table) {
        List<Picture> pictures = drawings(name);
        List<Block> blocks = new ArrayList<>();
        blocks.add(pictures.isEmpty() ? table : new Figure(pictures.get(0), caption, Optional.of(table)));
        pictures.stream().skip(1).forEach(picture -> blocks.add(new Figure(picture, caption, Optional.empty())));
        return blocks;
    }

    /** A length as it is cut. */
    String cut(double mm) {
        return units.length(mm, 1);
    }

    String length(double mm) {
        return units.length(mm);
    }

    String mass(OptionalDouble kg) {
        return kg.isPresent() ? units.mass(kg.getAsDouble()) : "";
    }

    static String money(OptionalDouble price) {
        return price.isPresent() ? NumberText.fixed(price.getAsDouble(), 2) : "";
    }

    static String count(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    static Column text(String heading) {
        return new Column(heading, false);
    }

    static Column number(String heading) {
        return new Column(heading, true);
    }

    static Row row(String about, String... cells) {
        return new Row(about, List.of(cells));
    }
}
