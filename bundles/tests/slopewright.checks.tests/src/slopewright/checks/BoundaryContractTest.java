package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/** Every rule that compares a number has a case on either side of its limit, a printed digit away. */
class BoundaryContractTest {
    /** How near a case comes to the limit by the unit that is printed; or half a per cent of the limit, where that is more. */
    private static final Map<String, Double> DIGITS = Map.of("m", 0.11, "deg", 0.11, "min", 0.61, "%", 1.0, "V", 0.11, "A", 0.11, "kt",
            0.11, "cd", 1.0, "\u00d7", 0.01, "", 1.0);
    private static final double SHARE_OF_LIMIT = 0.005;

    /** Rules whose cases stay farther off, and why. */
    private static final Map<String, String> FARTHER = Map.of("DATA-17", "lengths are printed in whole metres",
            "DATA-46", "lengths are printed in whole metres", "DATA-60",
            "distances of an aerial are printed in whole metres", "TF-02", "distances of units are printed in whole metres", "PANEL-03",
            "a range in kilometres, from an angle that is no printed number", "RANGE-02",
            "a range in kilometres, from an angle that is no printed number");

    /** Rules that say a number only where they are not met. */
    private static final Map<String, String> SILENT_WHERE_MET = Map.of("DATA-20", "two entries that are the same differ by no number",
            "DATA-23", "levels that agree are said as one", "DATA-25", "what is in its range is said as one; ranges have their own test",
            "UNIT-09", "units that stand as they were set out are said as one");

    private record Nearest(double met, double notMet) {
    }

    private static Map<String, Nearest> nearest() {
        Map<String, Nearest> found = new TreeMap<>();
        for (RuleCase one : RuleContractTest.cases()) {
            for (Outcome outcome : one.sample().get().outcomes(one.rule())) {
                if (outcome.margin().isPresent()) {
                    double digits = Math.abs(outcome.margin().getAsDouble()) / Math.max(DIGITS.getOrDefault(outcome.unit(), 0.0),
                            SHARE_OF_LIMIT * Math.abs(outcome.limit().getAsDouble()));
                    found.merge(outcome.rule(), new Nearest(outcome.result() == Result.PASS ? digits : Double.POSITIVE_INFINITY,
                            outcome.result() == Result.FAIL ? digits : Double.POSITIVE_INFINITY), (was, is) -> new Nearest(Math.min(
                                    was.met(), is.met()), Math.min(was.notMet(), is.notMet())));
                }
            }
        }
        return found;
    }

    @Test
    void everyLimitIsApproachedFromBothSides() {
        List<String> lacking = new ArrayList<>();
        Set<String> needless = new TreeSet<>(FARTHER.keySet());
        nearest().forEach((rule, found) -> {
            boolean met = found.met() <= 1 || SILENT_WHERE_MET.containsKey(rule);
            if (met && found.notMet() <= 1) {
                return;
            }
            needless.remove(rule);
            if (!FARTHER.containsKey(rule)) {
                lacking.add(rule + ": " + found);
            }
        });
        assertEquals(List.of(), lacking);
        assertEquals(Set.of(), needless, "rules that need no reason");
    }

    /** Outcomes that are weighed down to a note although their rule weighs more, and why none of them hides a danger. */
    private static final Map<String, String> LIGHTER = Map.of("DIST-01",
            "farther than the solution, eyes and wheels come higher; a landing distance that is lost has a rule of its own", "ROW-02",
            "on the other side, with the reason written down; the signal is true");

    @Test
    void nothingElseIsWeighedDownToANote() {
        Set<String> lighter = new TreeSet<>();
        for (RuleCase one : RuleContractTest.cases()) {
            boolean isNote = RuleCatalogue.find(one.rule()).orElseThrow().severity() == Severity.NOTE;
            if (!isNote && one.sample().get().outcomes(one.rule()).stream().anyMatch(outcome -> outcome.result() == Result.FAIL
                    && outcome.severity() == Severity.NOTE)) {
                lighter.add(one.rule());
            }
        }
        assertEquals(new TreeSet<>(LIGHTER.keySet()), lighter);
    }

    /** What is not met with severity fail is a failure whatever rules weigh beside it: no rule of safety is a note or lets one pass. */
    @Test
    void aRuleOfObstaclesClearanceOrSignalsIsAFailure() {
        Set<String> safety = Set.of("OBS-01", "OBS-04", "OBS-06", "OBS-08", "WHEEL-02", "SIG-01", "BOX-09", "EYE-01", "ROW-07", "TF-05",
                "BAR-05", "BOX-10", "EQUIP-05", "CIRC-01");
        assertEquals(Set.of(), safety.stream().filter(id -> RuleCatalogue.find(id).orElseThrow().severity() != Severity.FAIL)
                .collect(Collectors.toSet()));
    }
}
