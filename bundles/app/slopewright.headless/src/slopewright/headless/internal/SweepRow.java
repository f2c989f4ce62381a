package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.evaluation.sweep.PointSweep;
import slopewright.exchange.sheet.SheetCell;
import slopewright.model.io.Program;
import slopewright.siting.site.SurveyPoints;

/**
 * One row of the table of a sweep.
 *
 * @param named     what is swept, by the names of the columns
 * @param state     what was found
 * @param reason    why nothing was found out; empty where it was
 * @param inside    how many obstacles and points lie under or over the surface
 * @param above     how many stand above it
 * @param governing what stands highest against it, empty where nothing lies inside
 * @param place     its latitude, longitude and elevation, empty where it is none of the points
 * @param marginM   by how much it stays below
 */
record SweepRow(Map<String, String> named, State state, String reason, long inside, long above, String governing,
        Optional<double[]> place, OptionalDouble marginM) {

    /** What names a row, in the order of the columns. */
    static final List<String> NAMES = List.of("file", "projectFileSha256", "aerodrome", "end", "aid", "ruleSet", "verdict");

    /** The columns of the table. */
    static final List<String> COLUMNS = List.of("file", "projectFileSha256", "aerodrome", "end", "aid", "ruleSet", "verdict", "state",
            "reason", "inside", "above", "governing", "governingLatitudeDeg", "governingLongitudeDeg", "governingElevationM", "marginM",
            "program", "againstSha256");

    private static final int PLACE_DECIMALS = 9;
    private static final int DECIMALS = 4;

    /** What was found of one surface. */
    enum State {
        /** Something stands above it. */
        ABOVE("above"),
        /** Something lies under it and nothing above. */
        BELOW("below"),
        /** Nothing lies inside. */
        NOTHING_INSIDE("nothing inside"),
        /** Nobody knows. */
        NOT_EVALUATED("not evaluated");

        private final String word;

        State(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Makes the row of something that could not be found out. */
    static SweepRow none(Map<String, String> named, String reason) {
        return new SweepRow(named, State.NOT_EVALUATED, reason, 0, 0, "", Optional.empty(), OptionalDouble.empty());
    }

    /**
     * Makes the row of points against a surface. What stands above it is known; that nothing else does is known
     * within the points alone, and only if they are said to hold everything: a few of them may lie in a corner that somebody surveyed.
     */
    static SweepRow of(Map<String, String> named, PointSweep sweep, PointSweep.Result found, boolean everything) {
        SurveyPoints points = sweep.points();
        int worst = found.governing();
        String reason = found.above() > 0 ? "" : !found.covered() ? "the surface reaches beyond the points"
                : everything ? "" : (worst < 0 ? "no point lies inside" : "those that lie inside stay below")
                        + ", and nobody said that the points hold everything (--complete)";
        State state = found.above() > 0 ? State.ABOVE : !reason.isEmpty() ? State.NOT_EVALUATED
                : worst < 0 ? State.NOTHING_INSIDE : State.BELOW;
        return new SweepRow(named, state, reason, found.inside(), found.above(),
                worst < 0 ? "" : points.id(worst), worst < 0 ? Optional.empty()
                        : Optional.of(new double[] {points.north()[worst], points.east()[worst], points.elevationM()[worst]}),
                found.marginM());
    }

    /** Returns the row of two comparisons with one surface: the worse of both governs, and what one does not know nobody knows. */
    SweepRow with(SweepRow other) {
        boolean otherGoverns = other.marginM.isPresent() && (marginM.isEmpty() || other.marginM.getAsDouble() < marginM.getAsDouble());
        SweepRow worse = otherGoverns ? other : this;
        State joint = state == State.ABOVE || other.state == State.ABOVE ? State.ABOVE
                : state == State.NOT_EVALUATED || other.state == State.NOT_EVALUATED ? State.NOT_EVALUATED
                : state == State.BELOW || other.state == State.BELOW ? State.BELOW : State.NOTHING_INSIDE;
        String why = reason.isEmpty() || other.reason.isEmpty() ? reason + other.reason : reason + "; " + other.reason;
        return new SweepRow(named, joint, why, inside + other.inside, above + other.above, worse.governing, worse.place, worse.marginM);
    }

    /** Returns its cells. */
    List<SheetCell> cells(String against) {
        List<SheetCell> cells = new ArrayList<>(NAMES.stream().map(name -> SheetCell.text(named.getOrDefault(name, ""))).toList());
        cells.addAll(List.of(SheetCell.text(state.word()), SheetCell.text(reason), SheetCell.number((double) inside, 0),
                SheetCell.number((double) above, 0), SheetCell.text(governing)));
        for (int i = 0; i < 3; i++) {
            cells.add(SheetCell.number(place.isEmpty() ? null : Double.valueOf(place.get()[i]), i < 2 ? PLACE_DECIMALS : DECIMALS, ""));
        }
        cells.add(SheetCell.number(marginM.isEmpty() ? null : Double.valueOf(marginM.getAsDouble()), DECIMALS, ""));
        cells.addAll(List.of(SheetCell.text(Program.TEXT), SheetCell.text(against)));
        return cells;
    }

    /** Returns it for programs. */
    ObjectNode json() {
        ObjectNode node = Json.object();
        NAMES.forEach(name -> node.put(name, named.get(name)));
        node.put("state", state.word());
        node.put("reason", reason);
        node.put("inside", inside);
        node.put("above", above);
        node.put("governing", governing);
        double[] none = {Double.NaN, Double.NaN, Double.NaN};
        Json.put(node, "governingLatitudeDeg", place.orElse(none)[0]);
        Json.put(node, "governingLongitudeDeg", place.orElse(none)[1]);
        Json.put(node, "governingElevationM", place.orElse(none)[2]);
        Json.put(node, "marginM", marginM);
        return node;
    }
}
