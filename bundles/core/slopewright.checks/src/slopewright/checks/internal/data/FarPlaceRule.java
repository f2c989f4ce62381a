package slopewright.checks.internal.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;

/**
 * What was surveyed lies within fifty kilometres of the aerodrome, for the widest obstacle survey, Area 2 of Annex 15, reaches 45 km:
 * farther, a sign, a digit or the grid of its coordinates is wrong, and it would be taken to lie outside every surface. Severity fail: what
 * it is meant to be is compared with nothing.
 */
public final class FarPlaceRule extends ProjectRule {
    private static final double FAR_M = 50_000;

    /** Made by the service loader. */
    public FarPlaceRule() {
        super("DATA-27", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Optional<Surroundings> around = evaluation.aids().stream().map(AidEvaluation::surroundings)
                .flatMap(found -> found.value().stream()).findFirst();
        around.filter(found -> found.count() > 0).ifPresent(found -> {
            List<Identified> far = found.keep(FarPlaceRule.class, () -> far(found));
            far.forEach(element -> outcomes.about(element).met(false).saying("far", ElementNames.of(element), Words.km(FAR_M))
                    .advising("correct").add());
            if (far.isEmpty()) {
                outcomes.about(evaluation.project().getAerodrome()).met(true).saying("near", Words.count(found.count()), Words.km(FAR_M))
                        .add();
            }
        });
    }

    private static List<Identified> far(Surroundings around) {
        List<Identified> far = new ArrayList<>();
        around.obstacles().placed().stream().filter(placed -> placed.shape().points().stream()
                .anyMatch(point -> !(Math.hypot(point.alongM(), point.rightM()) <= FAR_M)))
                .map(ObstacleField.Placed::obstacle).forEach(far::add);
        around.blocks().stream().filter(block -> block.points().reachesBeyond(FAR_M)).map(Surroundings.Block::block).forEach(far::add);
        return List.copyOf(far);
    }
}
