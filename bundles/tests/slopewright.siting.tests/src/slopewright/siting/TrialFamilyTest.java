package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.Source;

/** A family that the product does not know, made of the exported types alone: it needs no change anywhere else. */
class TrialFamilyTest {

    /** One unit, green over red. */
    private static final class TwoColourBox implements IndicatorFamily {

        @Override
        public String key() {
            return "trial-box";
        }

        @Override
        public String name() {
            return "trial box";
        }

        @Override
        public Set<Trait> traits() {
            return Set.of(Trait.SECTORS);
        }

        @Override
        public List<Integer> unitCounts() {
            return List.of(1);
        }

        @Override
        public Siting site(SitingRequest request, RuleSet rules) {
            double slope = request.need(Input.SLOPE);
            CitedValue toEdge = rules.value("trial-box.unit-to-edge-m");
            double distance = request.need(Input.EYE_HEIGHT) / Math.tan(Math.toRadians(slope));
            double right = -request.need(Input.RUNWAY_WIDTH) / 2 - toEdge.value();
            UnitPlan unit = UnitPlan.twoColour("1", 1, new FramePoint(distance, right, 0), slope, 3, Light.RED, Light.GREEN);
            return new Siting(key(), rules.key(), rules.edition(), slope, distance, UnshiftedDistance.of(distance), slope,
                    request.need(Input.EYE_HEIGHT),
                    OptionalDouble.empty(), OptionalDouble.empty(), new FramePoint(distance, 0, 0), GroundSource.LEVEL, List.of(unit),
                            Optional.empty(),
                    Optional.of(Message.of("siting.no-surface")), Optional.empty(), List.of(),
                    List.of(new Siting.CitedUse(toEdge.key(), toEdge.value(), toEdge.unit(), toEdge.citation())));
        }

        @Override
        public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
            return site(request, rules);
        }

        @Override
        public Map<String, Meaning> meanings(List<SeenUnit> seen) {
            return Map.of("", Light.GREEN.equals(seen.get(0).light()) ? Meaning.ABOVE : Meaning.BELOW);
        }
    }

    private static RuleSet rules() {
        Source source = new Source("trial", CitedText.of("trial text"), CitedText.of("1"));
        Citation citation = new Citation("trial-box.unit-to-edge-m", source, CitedText.of("1"), Provenance.FROM_MEMORY, CitedText.of(""),
                "");
        var none = RuleSet.Tables.none();
        return new RuleSet(new RuleSet.Descriptor("trial", "1", CitedText.of("Trial"), CitedText.of("trial text"), CitedText.of(""),
                List.of("trial-box"), "table",
                "outer-first"), Map.of(citation.key(), new CitedValue(12, "m", citation)), none);
    }

    @Test
    void aNewFamilyIsSitedAndRead() {
        IndicatorFamily box = new TwoColourBox();
        Siting siting = box.site(Trials.runway().build(), rules());
        assertEquals(-34.5, siting.units().get(0).place().rightM(), 1e-12);
        assertEquals(1, siting.toConfirm().size());
        FramePoint high = new FramePoint(-2000, 300, 200);
        FramePoint low = new FramePoint(-2000, 300, 20);
        assertEquals(Meaning.ABOVE, Signals.observe(box, siting.units(), siting.reference(), high).meaning());
        assertEquals(Meaning.BELOW, Signals.observe(box, siting.units(), siting.reference(), low).meaning());
        assertEquals(Meaning.OUTSIDE, Signals.observe(box, siting.units(), siting.reference(), new FramePoint(900, 0, 20)).meaning());
        assertTrue(box.remarks(List.of()).isEmpty());
    }
}
