package slopewright.checks.internal.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.PadArea;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * No unit stands on another runway of the aerodrome, with what lies before its thresholds, nor on another FATO or in the safety area around
 * it. Rows keep a printed distance from other pavements beside this. Of a FATO that lies farther off than any is large nothing needs to be
 * known but its place (own band). Severity fail: an aircraft that lands or takes off there strikes it.
 */
public final class OtherLandingAreaRule extends AidRule {
    private static final double ANY_PAD_M = 300;

    /** Made by the service loader. */
    public OtherLandingAreaRule() {
        super("UNIT-12", Severity.FAIL);
    }

    /** How far outside a landing area a unit stands, metres, negative in it. */
    private record Outside(UnitAt unit, Identified area, double outsideM) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Aerodrome aerodrome = Projects.project(facts.aid()).orElseThrow().getAerodrome();
        Optional<Helipad> own = Projects.helipad(facts.host());
        List<Runway> runways = aerodrome.getRunways().stream().filter(runway -> facts.runway().filter(runway::equals).isEmpty()).toList();
        List<Helipad> pads = aerodrome.getHelipads().stream().filter(pad -> own.filter(pad::equals).isEmpty()).toList();
        if (runways.isEmpty() && pads.isEmpty()) {
            throw Stop.notApplicable(Message.of("UNIT-12.none-other"));
        }
        List<UnitAt> units = facts.units();
        List<Outside> found = new ArrayList<>();
        for (Runway runway : runways) {
            guarded(facts.aid(), outcomes, () -> beside(runway, units, facts.frame(), found));
        }
        for (Helipad pad : pads) {
            guarded(facts.aid(), outcomes, () -> beside(pad, units, facts.frame(), found));
        }
        found.stream().min(Comparator.comparingDouble(Outside::outsideM)).ifPresent(nearest -> {
            boolean clear = nearest.outsideM() > 0;
            Argument area = ElementNames.of(nearest.area());
            outcomes.about(facts.aid()).measured(Measure.atLeast(nearest.outsideM(), 0, "m").strict())
                    .saying(clear ? "clear" : "on", nearest.unit().name(), Words.margin(Math.abs(nearest.outsideM())), area)
                    .advising("move").add();
        });
    }

    private static void beside(Runway runway, List<UnitAt> units, SiteFrame frame, List<Outside> found) {
        List<RunwayEnd> ends = runway.getEnds();
        if (ends.size() != 2 || ends.stream().anyMatch(end -> end.getThreshold() == null) || runway.getWidthM() == null) {
            throw Stop.missing(Message.of("missing.runway-outline", ElementNames.of(runway)));
        }
        FramePoint first = inFrame(ends.get(0).getThreshold(), frame);
        FramePoint second = inFrame(ends.get(1).getThreshold(), frame);
        double length = first.planDistanceM(second);
        if (length == 0) {
            throw Stop.missing(Message.of("missing.runway-outline", ElementNames.of(runway)));
        }
        double before = displacedM(ends.get(0));
        double behind = displacedM(ends.get(1));
        for (UnitAt unit : units) {
            double along = unit.alongM() - first.alongM();
            double right = unit.rightM() - first.rightM();
            double toward = (along * (second.alongM() - first.alongM()) + right * (second.rightM() - first.rightM())) / length;
            double across = (right * (second.alongM() - first.alongM()) - along * (second.rightM() - first.rightM())) / length;
            double outside = Math.max(Math.abs(across) - runway.getWidthM() / 2, Math.max(-before - toward, toward - length - behind));
            found.add(new Outside(unit, runway, outside));
        }
    }

    private static double displacedM(RunwayEnd end) {
        return end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
    }

    private static void beside(Helipad pad, List<UnitAt> units, SiteFrame frame, List<Outside> found) {
        FramePoint middle = inFrame(AidFacts.need(pad.getPlace(), Message.of("missing.helipad-place")), frame);
        double awayM = units.stream().mapToDouble(unit -> at(unit).planDistanceM(middle)).min().orElse(0);
        if (awayM > ANY_PAD_M && PadArea.of(pad).isEmpty()) {
            return;
        }
        AidFacts.need(pad.getFatoLengthM(), Message.of("missing.fato-length"));
        AidFacts.need(pad.getFatoWidthM(), Message.of("missing.fato-width"));
        AidFacts.need(pad.getSafetyAreaWidthM(), Message.of("missing.safety-area-width"));
        PadArea area = PadArea.of(pad).orElseThrow();
        double landing = pad.getDirections().stream().map(ApproachDirection::getTrueBearingDeg).filter(bearing -> bearing != null)
                .findFirst().orElse(frame.bearingDeg());
        double turn = Math.toRadians(frame.bearingDeg() - landing);
        for (UnitAt unit : units) {
            double along = unit.alongM() - middle.alongM();
            double right = unit.rightM() - middle.rightM();
            FramePoint turned = new FramePoint(along * Math.cos(turn) - right * Math.sin(turn),
                    along * Math.sin(turn) + right * Math.cos(turn), 0);
            PadArea.Standing standing = area.standing(turned, landing);
            if (standing.where() == PadArea.Where.UNKNOWN) {
                throw Stop.missing(Message.of("missing.fato-bearing"));
            }
            found.add(new Outside(unit, pad, standing.clearM()));
        }
    }

    private static FramePoint at(UnitAt unit) {
        return new FramePoint(unit.alongM(), unit.rightM(), 0);
    }

    private static FramePoint inFrame(Place place, SiteFrame frame) {
        try {
            return frame.toFrame(place, frame.originElevationM());
        } catch (SitingException e) {
            throw Stop.unsolved(e.reason());
        }
    }
}
