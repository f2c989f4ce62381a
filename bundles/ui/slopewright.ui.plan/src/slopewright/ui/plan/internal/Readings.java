package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Verdict;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.trial.TrialVerdict;

/** What a layout gives, in lines of text in the units that the user prefers. */
public final class Readings {

    private static final int MOST_NAMES = 3;

    private Readings() {
    }

    /** Returns a length with its unit, rounded as what the rules say of it. */
    public static String length(double valueM) {
        return MessageTexts.length(valueM);
    }

    /** Returns a length in decimetres, with its unit, for a place that moves with the mouse. */
    public static String coarse(double valueM) {
        return MessageTexts.renderer().quantity(valueM, Notation.DECIMETRES);
    }

    /** Returns an angle of elevation. */
    public static String angle(double valueDeg) {
        return MessageTexts.renderer().quantity(valueDeg, Notation.DEGREES_MINUTES);
    }

    /** Returns a length with a sign in front. */
    public static String shift(double valueM) {
        return (valueM < 0 ? "−" : "+") + length(Math.abs(valueM));
    }

    /** Returns what all rules say of a trial. */
    public static List<Line> of(TrialVerdict verdict) {
        return verdict.lines().stream().map(said -> said.sign().map(sign -> signed(said.text(), sign)).orElse(Line.of(said.text())))
                .toList();
    }

    private static Line signed(String text, Verdict verdict) {
        return switch (verdict) {
            case NOT_MET -> Line.of(text, false);
            case TO_CLEAR_UP -> Line.warning(text);
            case MET -> Line.of(text, true);
            case NOT_APPLICABLE -> Line.of(text);
        };
    }

    /** Returns how far units go. */
    public static String shifts(double alongM, double rightM) {
        return rightM == 0 ? Messages.get("move.along", shift(alongM)) : Messages.get("move.both", shift(alongM), shift(rightM));
    }

    /** Returns which side of the centre line a place lies on, and how far. */
    public static String side(double rightM) {
        return Messages.get(rightM < 0 ? "read.left" : "read.right", length(Math.abs(rightM)));
    }

    /** Returns what a layout that is tried out gives, or why nothing can be worked out. */
    public static List<Line> of(Attempt<TrialFigures> trial) {
        Attempt<Siting> siting = trial.then(TrialFigures::siting);
        if (siting.value().isEmpty()) {
            return List.of(Line.of(MessageTexts.of(siting.reason().orElseThrow()), false));
        }
        return of(trial.orThrow(), siting.orThrow());
    }

    private static List<Line> of(TrialFigures trial, Siting siting) {
        List<Line> lines = new ArrayList<>();
        boolean atRunway = trial.host() instanceof RunwayEnd;
        lines.add(Line.of(Messages.get(atRunway ? "read.from-threshold" : "read.from-hover", length(siting.distanceM()))));
        lines.add(Line.of(Messages.get("read.eye-height", length(siting.mehtM()))));
        lines.addAll(WheelLimits.of(trial.wheels()));
        if (siting.surface().isPresent()) {
            lines.addAll(obstacles(trial.obstacles(), trial.surveyed()));
        }
        return lines;
    }

    private static List<Line> obstacles(Attempt<SurfaceComparison> attempt, boolean surveyed) {
        if (attempt.value().isEmpty()) {
            return List.of(Line.warning(Messages.get("read.uncompared", MessageTexts.of(attempt.reason().orElseThrow()))));
        }
        SurfaceComparison comparison = attempt.orThrow();
        List<Line> lines = new ArrayList<>();
        boolean known = surveyed && comparison.uncompared().isEmpty();
        if (comparison.isUnsurveyed() && !surveyed) {
            lines.add(Line.warning(Messages.get("read.unsurveyed")));
        } else {
            lines.add(comparison.governing().map(governing -> governing(comparison, governing, known))
                    .orElseGet(() -> clear(Messages.get("read.no-obstacle"), known)));
        }
        if (!comparison.uncompared().isEmpty()) {
            lines.add(Line.warning(Messages.get("read.uncompared", names(comparison.uncompared()))));
        }
        return lines;
    }

    private static Line governing(SurfaceComparison comparison, ObstacleComparison governing, boolean known) {
        if (!governing.isPenetrating()) {
            return clear(Messages.get("read.clear", length(governing.marginM()), governing.label()), known);
        }
        String text = Messages.get("read.through", governing.label(), length(-governing.marginM()));
        return comparison.isPenetrated() ? Line.of(text, false)
                : Line.warning(Messages.get("read.shielded", text, governing.shielding().by()));
    }

    /** It is good only where everything that is entered was compared, and a survey says that nothing else stands there. */
    private static Line clear(String text, boolean known) {
        return known ? Line.of(text, true) : Line.of(text);
    }

    /** Returns the names of what could not be compared, the first ones of many. */
    public static String names(List<Uncompared> uncompared) {
        List<String> named = uncompared.stream().limit(MOST_NAMES).map(Uncompared::label).toList();
        String list = MessageTexts.of(Words.names(named));
        int more = uncompared.size() - named.size();
        return more == 0 ? list : Messages.get("read.and-more", list, more);
    }

    /** Returns why something could not be compared, empty where it could. */
    public static Optional<String> reason(Optional<Uncompared> uncompared) {
        return uncompared.map(open -> Messages.get("read.uncompared", MessageTexts.of(open.reason())));
    }
}
