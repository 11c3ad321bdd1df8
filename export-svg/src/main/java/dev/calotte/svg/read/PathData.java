package dev.calotte.svg.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Follows the commands of a path (SVG 1.1, section 8.3). */
final class PathData {

    private final Outlines outlines;
    private final Scanner scanner;
    private final List<Track> tracks = new ArrayList<>();
    private double x;
    private double y;
    private double beginX;
    private double beginY;
    private boolean moved;
    private boolean open;

    PathData(Outlines outlines, String data) {
        this.outlines = outlines;
        this.scanner = new Scanner(outlines.elements(), data);
    }

    /** Its lines, in their order. */
    List<Track> tracks() throws IOException {
        char command = '\0';
        while (!scanner.isAtEnd()) {
            if (scanner.isAtLetter() || command == '\0' || command == 'Z' || command == 'z') {
                command = scanner.letter();
            } else {
                // further numbers of a move are lines, of all others the same again
                command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
            }
            follow(command);
        }
        return tracks;
    }

    private void follow(char command) throws IOException {
        boolean relative = command >= 'a';
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> move(fromX + scanner.number(), fromY + scanner.number());
            case 'L' -> line(fromX + scanner.number(), fromY + scanner.number());
            case 'H' -> line(fromX + scanner.number(), y);
            case 'V' -> line(x, fromY + scanner.number());
            case 'A' -> arc(fromX, fromY);
            case 'Z' -> close();
            default ->
                throw outlines.elements()
                        .wrong("the command " + command + " of a path cannot be read; save curves as straight sides or"
                                + " arcs of circles");
        }
    }

    private void move(double toX, double toY) {
        x = toX;
        y = toY;
        beginX = toX;
        beginY = toY;
        moved = true;
        open = false;
    }

    /** The line that the next side belongs to; after a close a new one begins where the last one did. */
    private Track track() throws IOException {
        if (!open) {
            if (!moved) {
                throw outlines.elements().wrong("a path does not begin with M");
            }
            tracks.add(outlines.track(x, y));
            open = true;
        }
        return tracks.get(tracks.size() - 1);
    }

    private void line(double toX, double toY) throws IOException {
        track().line(toX, toY);
        x = toX;
        y = toY;
    }

    private void arc(double fromX, double fromY) throws IOException {
        double radius = Math.abs(scanner.number());
        if (Math.abs(scanner.number()) != radius) {
            throw outlines.elements().wrong("an arc of an ellipse cannot be read; save it as straight sides");
        }
        scanner.number();
        boolean large = scanner.flag();
        boolean clockwise = scanner.flag();
        double toX = fromX + scanner.number();
        double toY = fromY + scanner.number();
        track().arc(new Track.Bend(radius, large, clockwise), toX, toY);
        x = toX;
        y = toY;
    }

    private void close() throws IOException {
        track().close();
        open = false;
        x = beginX;
        y = beginY;
    }
}
