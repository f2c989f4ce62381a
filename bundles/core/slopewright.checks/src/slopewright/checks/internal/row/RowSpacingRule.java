package slopewright.checks.internal.row;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Runway;
import slopewright.siting.Trait;

/** The units keep their distance from each other. Severity fail: units that run together are not told apart. */
public final class RowSpacingRule extends AidRule {

    /** Made by the service loader. */
    public RowSpacingRule() {
        super("ROW-04", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<RowLayout> layouts = RowLayout.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            List<Neighbours> neighbours = Neighbours.of(side);
            if (neighbours.isEmpty()) {
                outcomes.notApplicable(facts.aid(), Message.of("ROW-04.single", side.get(0).name()));
                continue;
            }
            Optional<Double> edge = facts.runway().map(Runway::getWidthM).map(width -> Math.abs(side.get(0).rightM()) - width / 2);
            RowLayout layout = RowLayout.nearest(layouts, edge, neighbours);
            LengthRange range = layout.spacing();
            Worst<Neighbours> worst = Worst.of(neighbours, pair -> range.measure(pair.spacingM()));
            outcomes.about(facts.aid()).measured(worst.measure()).citing(range.citations())
                    .saying("spacing", worst.item().inner().name(), worst.item().outer().name(), Words.m(worst.item().spacingM()),
                            layout.term(), Words.m(range.leastM()), Words.m(range.mostM()))
                    .advising("space").add();
        }
    }
}
