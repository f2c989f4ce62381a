package slopewright.checks.internal;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.standards.Citation;

/** The eye height over the threshold is the one that the aeroplanes need. */
public final class EyeHeightRule extends AidRule {

    /** Made by the service loader. */
    public EyeHeightRule() {
        super("EYE-01", "Eye height over the threshold (MEHT)",
                "The lowest on-slope eye height over the threshold reaches the one that the most demanding aeroplane and the chosen"
                + " clearance need.",
                Severity.FAIL, Stream.of(ROWS, BARS, Set.of("tri-colour", "pulsating", "alignment-panels")).flatMap(Set::stream)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (!facts.atRunway()) {
            return;
        }
        if (facts.host().getGlidePath() != null && ROWS.contains(facts.family())) {
            findings.notApplicable(facts.aid(),
                    "Beside a glide path the wheel clearance decides (WHEEL-02), not an eye height to be reached.");
            return;
        }
        Siting laid = facts.laid();
        Siting solved = facts.solvedAtLens();
        double target = solved.eyeHeightM();
        double tan = Angles.tanDeg(laid.lowestOnSlopeDeg());
        List<Citation> sources = solved.citations().stream()
                .filter(use -> use.name().contains("clearance") || use.name().contains("crossing-height")
                || use.name().contains("allowance"))
                .map(Siting.CitedUse::citation).toList();
        Measure measure = Measure.atLeast(SettingOut.height(laid.eyeHeightM(), target), target, "m");
        compare(findings, facts.aid(), measure, sources.isEmpty() ? Optional.empty() : Optional.of(Findings.weakest(sources)),
                "The eye height over the threshold (MEHT) is " + Words.mFt(laid.eyeHeightM()) + " on " + Words.deg(laid.lowestOnSlopeDeg())
                        + "; "
                        + Words.mFt(target) + " are needed.", "Move the indicator " + Words.m((target - laid.eyeHeightM()) / tan)
                                + " farther from the threshold, or choose a smaller clearance that a study accepts.", severity());
    }
}
