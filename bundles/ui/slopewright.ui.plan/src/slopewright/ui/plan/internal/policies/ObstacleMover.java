package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.model.Obstacle;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.Obstruction;

/** Moves obstacles; how one would stand against the obstacle surfaces follows the mouse. */
public final class ObstacleMover {

    private ObstacleMover() {
    }

    /** Returns the mover of obstacles. */
    public static Mover<Obstacle> get() {
        return PlacesMover.of("Move obstacle", Obstacle::getPlaces, ObstacleMover::comparison);
    }

    /**
     * Says how the moved obstacle would stand against the surface that it is worst for, and why it cannot be compared; a tick only where it
     * was compared with the surface of every aid.
     */
    private static List<Line> comparison(PlanContext context, Obstacle moved) {
        Optional<Obstruction> worst = Optional.empty();
        List<AidEvaluation> aids = context.obstructions().map(all -> all.evaluation().aids()).orElse(List.of());
        boolean whole = !aids.isEmpty();
        Set<String> reasons = new LinkedHashSet<>();
        for (AidEvaluation aid : aids) {
            Attempt<Optional<ObstacleComparison>> found = aid.compare(moved);
            whole &= found.value().isPresent();
            if (aid.obstacles().value().isPresent() && found.reason().isPresent()) {
                reasons.add(MessageTexts.of(found.reason().get()));
            }
            Optional<Obstruction> here = found.value().flatMap(inside -> inside).map(inside -> new Obstruction(inside, aid));
            worst = Obstruction.worse(worst, here);
        }
        List<Line> lines = new ArrayList<>();
        reasons.forEach(reason -> lines.add(Line.warning(Messages.get("read.uncompared", reason))));
        if (worst.isPresent()) {
            boolean through = worst.get().excessM() > 0;
            String text = Messages.get(through ? "tip.through" : "tip.below", Readings.length(Math.abs(worst.get().excessM())),
                    MessageTexts.label(worst.get().aid().aid()));
            lines.add(through || whole ? Line.of(text, !through) : Line.of(text));
        } else if (whole) {
            lines.add(Line.of(Messages.get("move.outside"), true));
        }
        return lines;
    }
}
