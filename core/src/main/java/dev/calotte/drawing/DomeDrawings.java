package dev.calotte.drawing;

import dev.calotte.document.Picture;
import java.util.ArrayList;
import java.util.List;

/**
 * The drawings by which a dome is understood and put together, each a sheet of one set.
 *
 * <pre>{@code
 * List<Picture> pictures = DomeDrawings.of(new Subject("Shelter", parts, UnitSystem.METRIC, 0));
 * }</pre>
 */
public final class DomeDrawings {

    private DomeDrawings() {}

    /**
     * Makes all drawings.
     *
     * @param subject what they are about
     * @return the documents below {@code drawings/}
     */
    public static List<Picture> of(Subject subject) {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(PlanDrawing.of(subject));
        drafts.addAll(PatchesDrawing.of(subject));
        drafts.add(ElevationDrawing.of(subject));
        drafts.add(RowsDrawing.of(subject));
        drafts.addAll(PanelSheets.of(subject));
        drafts.addAll(HubSheets.of(subject));
        drafts.addAll(StepDrawings.of(subject));
        List<Picture> pictures = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            pictures.add(drafts.get(i).framed(subject.title(), subject.unitsInWords(), i + 1, drafts.size()));
        }
        return pictures;
    }
}
