package slopewright.checks.internal.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Runway;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/**
 * One of the lateral layouts that a rule set knows for a row: the usual one and those for special cases. The distance from the runway edge
 * and the spacing belong together, so that a row is compared with one layout as a whole.
 *
 * @param name    its name in the catalogue, below {@code term.row-layout}
 * @param edge    inner unit to runway edge
 * @param spacing between neighbouring units
 */
record RowLayout(String name, LengthRange edge, LengthRange spacing) {

    /** Returns the layouts that the family may have on the runway, the usual one first. */
    static List<RowLayout> of(AidFacts facts) {
        CitedValue further = facts.length("inner-unit-to-edge-tolerance");
        CitedValue closer = facts.hasLength("inner-unit-to-edge-tolerance-closer") ? facts.length("inner-unit-to-edge-tolerance-closer")
                : further;
        LengthRange edge = LengthRange.around(facts.length("inner-unit-to-edge"), closer, further);
        LengthRange spacing = facts.hasLength("unit-spacing-least")
                ? LengthRange.between(facts.length("unit-spacing-least"), facts.length("unit-spacing"))
                : around(facts, "unit-spacing");
        List<RowLayout> layouts = new ArrayList<>();
        layouts.add(new RowLayout("usual", edge, spacing));
        boolean lowCode = facts.runway().map(Runway::getCodeNumber).filter(code -> code <= 2).isPresent();
        if (lowCode && facts.hasLength("reduced-unit-spacing")) {
            layouts.add(new RowLayout("reduced", fromReduced(facts.length("reduced-inner-unit-to-edge"),
                    facts.length("reduced-inner-unit-to-edge-tolerance"), edge), around(facts, "reduced-unit-spacing")));
        }
        if (lowCode && facts.hasLength("small-runway-inner-unit-to-edge")) {
            layouts.add(new RowLayout("small-runway",
                    LengthRange.around(facts.length("small-runway-inner-unit-to-edge"), closer, further), spacing));
        }
        if (facts.hasLength("enlarged-unit-spacing")) {
            LengthRange enlarged = around(facts, "enlarged-unit-spacing");
            layouts.add(new RowLayout("longer-range", edge, enlarged));
            layouts.add(new RowLayout("conversion", around(facts, "enlarged-inner-unit-to-edge"), enlarged));
        }
        return layouts;
    }

    private static LengthRange around(AidFacts facts, String name) {
        CitedValue tolerance = facts.length(name + "-tolerance");
        return LengthRange.around(facts.length(name), tolerance, tolerance);
    }

    /** The reduced layout has its distance as the least one (Fig 5-19 f), so that it reaches up to the usual one. */
    private static LengthRange fromReduced(CitedValue reduced, CitedValue closer, LengthRange usual) {
        List<Citation> citations = new ArrayList<>(List.of(reduced.citation(), closer.citation()));
        citations.addAll(usual.citations());
        return new LengthRange(reduced.value() - closer.value(), usual.mostM(), reduced.value(), citations.stream().distinct().toList());
    }

    /** Returns the layout to which a side comes nearest in both dimensions; in the spacing alone where it has no distance from an edge. */
    static RowLayout nearest(List<RowLayout> layouts, Optional<Double> edgeM, List<Neighbours> neighbours) {
        return layouts.stream().min(Comparator.comparingDouble(layout -> layout.missedByM(edgeM, neighbours))).orElseThrow();
    }

    private double missedByM(Optional<Double> edgeM, List<Neighbours> neighbours) {
        double edgeMissed = edgeM.map(distance -> missedByM(edge, distance)).orElse(0.0);
        return edgeMissed + neighbours.stream().mapToDouble(pair -> missedByM(spacing, pair.spacingM())).max().orElse(0);
    }

    private static double missedByM(LengthRange range, double lengthM) {
        return Math.max(0, -range.measure(lengthM).margin());
    }

    /** Returns what it is called, within a sentence. */
    Argument term() {
        return Words.term("row-layout." + name);
    }
}
