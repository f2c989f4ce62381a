package slopewright.checks.internal.data;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.magnetic.SiteVariation;

/**
 * The designator of a runway end is its magnetic bearing in tens of degrees; beyond ten degrees it is that of another runway or end. A
 * warning: no number rests on it, it names the runway on every paper.
 */
public final class DesignatorRule extends HostRule {
    private static final Pattern NUMBER = Pattern.compile("(\\d{1,2})[LCR]?");
    private static final int GREATEST = 36;
    private static final double ALLOWED_DEG = 10;

    /** Made by the service loader. */
    public DesignatorRule() {
        super("DATA-16", Severity.WARNING);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        if (end.getDesignator() == null || end.getDesignator().isBlank()) {
            throw Stop.missing(Message.of("missing.designator"));
        }
        Matcher number = NUMBER.matcher(end.getDesignator().strip());
        int tens = number.matches() ? Integer.parseInt(number.group(1)) : 0;
        if (tens < 1 || tens > GREATEST) {
            outcomes.about(end).met(false).saying("no-number", Words.name(end.getDesignator())).advising("correct").add();
            return;
        }
        Double entered = end.getTrueBearingDeg();
        double bearing = entered != null ? entered : RunwayGeometry.bearingDeg(end)
                .orElseThrow(() -> Stop.missing(Message.of("missing.bearing-or-threshold")));
        SiteVariation variation = SiteVariation.of(end, SurveyDays.of(Projects.project(end).orElseThrow()));
        double magnetic = variation.magneticDeg(bearing);
        double apart = RunwayGeometry.apartDeg(magnetic, tens * 10);
        outcomes.about(end).measured(Measure.atMost(apart, ALLOWED_DEG, "deg"))
                .saying("compared", Words.name(end.getDesignator()), Words.degrees(magnetic), Words.degrees(bearing),
                        Words.degrees(variation.variationDeg()), Words.degrees(ALLOWED_DEG)).advising("correct").add();
    }
}
