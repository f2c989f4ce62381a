package slopewright.checks.internal.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.model.Runway;
import slopewright.standards.CitedValue;

/** The lateral layouts that a rule set knows for a row: the usual one and those for special cases. */
final class RowLayouts {

    /**
     * One layout.
     *
     * @param name    what it is called
     * @param edge    inner unit to runway edge
     * @param spacing between units
     */
    record Choice(String name, CitedValue edge, CitedValue spacing) {
    }

    private final List<Choice> choices;

    private RowLayouts(List<Choice> choices) {
        this.choices = choices;
    }

    /** Returns the layouts that the family may have on the runway. */
    static RowLayouts of(AidFacts facts) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("the usual distance", facts.length("inner-unit-to-edge"), facts.length("unit-spacing")));
        boolean lowCode = facts.runway().map(Runway::getCodeNumber).filter(code -> code <= 2).isPresent();
        if (lowCode && facts.hasLength("reduced-unit-spacing")) {
            choices.add(new Choice("that of the reduced layout", facts.length("reduced-inner-unit-to-edge"),
                    facts.length("reduced-unit-spacing")));
        }
        if (lowCode && facts.hasLength("small-runway-inner-unit-to-edge")) {
            choices.add(new Choice("that at small runways", facts.length("small-runway-inner-unit-to-edge"),
                    facts.length("unit-spacing-least")));
        }
        if (facts.hasLength("enlarged-unit-spacing")) {
            choices.add(new Choice("that for later conversion to four units", facts.length("enlarged-inner-unit-to-edge"),
                    facts.length("enlarged-unit-spacing")));
        }
        return new RowLayouts(choices);
    }

    /** Returns the layout whose edge distance comes nearest. */
    Choice nearestEdge(double distanceM) {
        return choices.stream().min(Comparator.comparingDouble(choice -> Math.abs(choice.edge().value() - distanceM))).orElseThrow();
    }

    /** Returns the layout whose spacing comes nearest. */
    Choice nearestSpacing(double spacingM) {
        return choices.stream().min(Comparator.comparingDouble(choice -> Math.abs(choice.spacing().value() - spacingM))).orElseThrow();
    }
}
