package dev.calotte.cli.brief;

import dev.calotte.export.Finish;
import java.util.List;

/**
 * Which files are written, and how.
 *
 * @param kerfMm how wide a cut is, 0 if lines stay where they are
 * @param finish how files are finished
 * @param files the families of files to write
 */
public record Output(double kerfMm, Finish finish, List<Section> files) {

    /**
     * Copies the list.
     *
     * @param kerfMm how wide a cut is
     * @param finish how files are finished
     * @param files the families of files to write
     */
    public Output {
        files = List.copyOf(files);
    }

    /**
     * Whether a family of files is to be written.
     *
     * @param section the family
     * @return whether the brief asks for it
     */
    public boolean wants(Section section) {
        return files.contains(section);
    }
}
