package dev.calotte.assembly;

import dev.calotte.parts.Parts;
import java.util.List;

/**
 * What an opening takes out of a frame and what is left to be framed round it. Pieces that are gone have the marks of the
 * dome without openings.
 *
 * <p>Redundant members are counted for pin joints with the base hubs fixed: struts that do not join two base hubs, less
 * three for each hub that is not on the base (J. C. Maxwell, 1864, "On the calculation of the equilibrium and stiffness
 * of frames"; for a dome of class I it equals the number of its base hubs less 3). A whole sphere has no base: its six
 * free motions are taken instead. Below 0 the frame is a mechanism; 0 or more says nothing about strength, nor that the
 * members stand where they are needed.
 *
 * <pre>{@code
 * for (OpeningReport report : OpeningReport.of(parts)) {
 *     List<String> struts = report.removedStruts();
 * }
 * }</pre>
 *
 * @param name what the opening is called
 * @param removedPanels the marks of the panels that it takes
 * @param removedStruts the marks of the struts that go with them
 * @param removedHubs the marks of the hubs that go with those
 * @param freeEdges the marks of the struts round it that keep a panel on one side
 * @param bareStruts the marks of the struts across it and below it that keep no panel
 * @param rimHubs the marks of the hubs round it
 * @param ends what struts end on the rim, hub by hub and counter-clockwise from outside at each
 * @param redundantBefore redundant members before this opening, those before it in the list already made
 * @param redundantAfter redundant members after it, below 0 if members are missing
 */
public record OpeningReport(
        String name,
        List<String> removedPanels,
        List<String> removedStruts,
        List<String> removedHubs,
        List<String> freeEdges,
        List<String> bareStruts,
        List<String> rimHubs,
        List<End> ends,
        int redundantBefore,
        int redundantAfter) {

    /**
     * A strut that ends on the rim of an opening.
     *
     * @param hub the mark of the hub
     * @param strut the mark of the strut
     * @param lengthMm the strut from node to node
     */
    public record End(String hub, String strut, double lengthMm) {}

    /**
     * Copies the lists.
     *
     * @param name what the opening is called
     * @param removedPanels the panels that it takes
     * @param removedStruts the struts that go with them
     * @param removedHubs the hubs that go with those
     * @param freeEdges the struts round it that keep one panel
     * @param bareStruts the struts that keep none
     * @param rimHubs the hubs round it
     * @param ends what struts end on the rim
     * @param redundantBefore redundant members before
     * @param redundantAfter redundant members after
     */
    public OpeningReport {
        removedPanels = List.copyOf(removedPanels);
        removedStruts = List.copyOf(removedStruts);
        removedHubs = List.copyOf(removedHubs);
        freeEdges = List.copyOf(freeEdges);
        bareStruts = List.copyOf(bareStruts);
        rimHubs = List.copyOf(rimHubs);
        ends = List.copyOf(ends);
    }

    /**
     * Reports on each opening of a dome.
     *
     * @param parts the parts of the dome with its openings
     * @return one report for each opening, in their order
     */
    public static List<OpeningReport> of(Parts parts) {
        return new OpeningSurvey(parts).reports();
    }

    /**
     * The count of redundant members in words.
     *
     * @return a sentence
     */
    public String redundancy() {
        String after = redundantAfter < 0
                ? "after it " + -redundantAfter + (redundantAfter == -1 ? " member more is" : " members more are")
                        + " needed before the frame is a mechanism no longer"
                : redundantAfter + " after it";
        return "Redundant members, counted for pin joints on a fixed base: " + redundantBefore + " before the opening, "
                + after + ". This says nothing about strength.";
    }
}
