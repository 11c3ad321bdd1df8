package dev.calotte.cli.report;

import dev.calotte.assembly.Patch;
import dev.calotte.assembly.PatchKind;
import dev.calotte.assembly.Patches;
import dev.calotte.dome.Panel;
import java.io.IOException;
import java.util.Locale;

/**
 * Writes {@code patches} of {@code dome.json}: how they were made, their kinds with the order in which panels are joined,
 * the patches with the indices of their panels in that order, and the seams between patches in order.
 *
 * @param json where to write
 */
record PatchJson(JsonWriter json) {

    void write(Patches patches) throws IOException {
        json.object("patches", () -> {
            json.text("way", patches.way().name().toLowerCase(Locale.ROOT));
            json.flag("exactStars", patches.areExactStars());
            json.objects("kinds", patches.kinds(), this::kind);
            json.objects("patches", patches.patches(), this::patch);
            json.objects("joins", patches.joins(), this::join);
            json.number("lastSeam", patches.lastSeamMm());
        });
    }

    private void kind(PatchKind kind) throws IOException {
        json.text("mark", kind.mark());
        json.text("hand", kind.hand().name().toLowerCase(Locale.ROOT));
        json.text("mirror", kind.twin());
        json.integer("count", kind.count());
        json.texts("panels", kind.panels());
        json.objects("seams", kind.seams(), this::seam);
    }

    private void seam(PatchKind.Seam seam) throws IOException {
        json.integers("these", seam.these());
        json.integers("to", seam.to());
        json.number("length", seam.lengthMm());
    }

    private void patch(Patch patch) throws IOException {
        json.text("mark", patch.mark());
        json.text("kind", patch.kind().mark());
        json.integers("panels", patch.panels().stream().map(Panel::index).toList());
    }

    private void join(Patches.Join join) throws IOException {
        json.text("patch", join.patch());
        json.text("to", join.to());
        json.number("length", join.lengthMm());
    }
}
