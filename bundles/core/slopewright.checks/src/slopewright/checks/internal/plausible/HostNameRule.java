package slopewright.checks.internal.plausible;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Runway;
import slopewright.siting.ElementNames;
import slopewright.siting.magnetic.MagneticModel;
import slopewright.siting.magnetic.SiteVariation;

/**
 * A runway is called by its two ends, and an approach to a helipad whose name ends with a number by its direction: three digits are
 * degrees, two are tens of degrees, true or magnetic. Two hold within ten degrees, three within half of what they are rounded to (ten, five
 * or one) and one more, by which north may have moved. A warning: no number rests on a name, it stands on every paper.
 */
public final class HostNameRule extends ProjectRule {
    private static final Pattern NUMBER = Pattern.compile(".*?(\\d{2,3})\\D*");
    private static final double ALLOWED_DEG = 10;
    private static final int[] ROUNDED_TO_DEG = {10, 5, 1};
    private static final int TURN_DEG = 360;
    private static final int HALF_TURN_DEG = 180;

    /** Made by the service loader. */
    public HostNameRule() {
        super("DATA-43", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return;
        }
        aerodrome.getRunways().forEach(runway -> compare(runway, outcomes));
        aerodrome.getHelipads().stream().flatMap(pad -> pad.getDirections().stream()).forEach(direction -> compare(direction, outcomes));
    }

    private static void compare(Runway runway, OutcomeCollector outcomes) {
        List<String> ends = runway.getEnds().stream().map(ApproachHost::getDesignator).filter(HostNameRule::isGiven).map(String::strip)
                .toList();
        if (ends.size() != 2) {
            return;
        }
        if (!isGiven(runway.getDesignator())) {
            outcomes.notEvaluated(runway, List.of(Message.of("missing.designator")), Message.of("DATA-43.unnamed", Words.names(ends)));
            return;
        }
        boolean same = Stream.of(ends.get(0) + "/" + ends.get(1), ends.get(1) + "/" + ends.get(0))
                .anyMatch(name -> name.equals(runway.getDesignator().replace(" ", "")));
        outcomes.about(runway).met(same).saying(same ? "ends" : "other", Words.name(runway.getDesignator()), Words.names(ends))
                .advising("correct").add();
    }

    private static void compare(ApproachDirection direction, OutcomeCollector outcomes) {
        if (!isGiven(direction.getDesignator()) || direction.getTrueBearingDeg() == null) {
            return;
        }
        Matcher number = NUMBER.matcher(direction.getDesignator());
        if (!number.matches()) {
            return;
        }
        int digits = Integer.parseInt(number.group(1));
        double named = number.group(1).length() == 2 ? digits * 10.0 : digits;
        double bearing = direction.getTrueBearingDeg();
        Optional<Double> magnetic = Attempt.of(() -> SiteVariation.of(direction,
                LocalDate.of((int) MagneticModel.bundled().epoch(), 1, 1)).magneticDeg(bearing)).value();
        double allowed = number.group(1).length() == 2 ? ALLOWED_DEG
                : Arrays.stream(ROUNDED_TO_DEG).filter(step -> digits % step == 0).findFirst().orElseThrow() / 2.0 + 1;
        double apart = Math.min(apartDeg(bearing, named), magnetic.map(degrees -> apartDeg(degrees, named)).orElse((double) HALF_TURN_DEG));
        outcomes.about(direction).measured(Measure.atMost(apart, allowed, "deg"))
                .saying("direction", ElementNames.of(direction), Words.degrees(bearing), Words.degrees(named), Words.degrees(allowed))
                .advising("correct").add();
    }

    private static double apartDeg(double bearingDeg, double otherDeg) {
        double turn = Math.abs(bearingDeg - otherDeg) % TURN_DEG;
        return Math.min(turn, TURN_DEG - turn);
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
