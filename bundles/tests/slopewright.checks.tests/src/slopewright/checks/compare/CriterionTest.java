package slopewright.checks.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import slopewright.checks.compare.Criterion.Weighed;
import slopewright.evaluation.comparison.Candidate.Fit;

/** Scores worked by hand. */
class CriterionTest {
    private static final Weighed GOOD = new Weighed(Fit.TO_CLEAR_UP, true, 40, Map.of(Criterion.RULES, 30.0, Criterion.WHEELS, 9.0,
            Criterion.UNITS, 4.0));
    private static final Weighed SMALL = new Weighed(Fit.FITS, true, 20, Map.of(Criterion.RULES, 20.0, Criterion.WHEELS, 6.0,
            Criterion.UNITS, 2.0));
    private static final Weighed BROKEN = new Weighed(Fit.DOES_NOT_FIT, false, 40, Map.of(Criterion.RULES, 39.0,
            Criterion.WHEELS, 99.0));
    private static final List<Weighed> ALL = List.of(GOOD, SMALL, BROKEN);

    /** Rules 30 of 40, wheels the best, units the most: (3 * 0.75 + 2 * 1 + 1 * 0) / 6; and (3 * 20 / 40 + 2 * 0 + 1 * 1) / 6. */
    @Test
    void weightsCountEachShare() {
        Map<Criterion, Integer> weights = Map.of(Criterion.RULES, 3, Criterion.WHEELS, 2, Criterion.UNITS, 1);
        assertEquals(100 * 4.25 / 6, Criterion.score(GOOD, ALL, weights).orElseThrow(), 1e-9);
        assertEquals(100 * 2.5 / 6, Criterion.score(SMALL, ALL, weights).orElseThrow(), 1e-9);
    }

    @Test
    void whatBreaksARuleHasNoScoreAndSetsNoBound() {
        assertEquals(Optional.empty(), Criterion.score(BROKEN, ALL, Criterion.alike()));
        assertEquals(Optional.empty(), Criterion.score(GOOD, ALL, Map.of(Criterion.RULES, 0)));
        assertEquals(100, Criterion.score(GOOD, ALL, Map.of(Criterion.WHEELS, 1)).orElseThrow(), 1e-9);
    }

    /** What fits stands first, though what is to be cleared up scores 100 by the wheels alone and it scores nothing. */
    @Test
    void theVerdictComesBeforeTheScore() {
        Map<Criterion, Integer> weights = Map.of(Criterion.WHEELS, 1);
        assertEquals(100, Criterion.score(GOOD, ALL, weights).orElseThrow(), 1e-9);
        assertEquals(0, Criterion.score(SMALL, ALL, weights).orElseThrow(), 1e-9);
        Weighed better = new Weighed(Fit.FITS, true, 20, Map.of(Criterion.WHEELS, 7.0));
        List<Weighed> all = List.of(BROKEN, GOOD, SMALL, better);
        assertEquals(List.of(better, SMALL, GOOD, BROKEN), all.stream().sorted(Criterion.bestFirst(all, weights)).toList());
    }

    @Test
    void weightsAreReadAsTheyAreWritten() {
        Map<Criterion, Integer> weights = Criterion.weights("rules=3, load=0");
        assertEquals("rules=3,wheels=1,obstacles=1,eye=1,units=1,load=0", Criterion.text(weights));
        assertEquals(weights, Criterion.weights(Criterion.text(weights)));
        assertEquals(Criterion.alike(), Criterion.weights(""));
        for (String wrong : List.of("rules", "rules=6", "rules=-1", "moon=1", "rules=1;load=2", "rules=1,,load=2")) {
            assertThrows(IllegalArgumentException.class, () -> Criterion.weights(wrong), wrong);
        }
    }

    /** The load of neither is known. */
    @Test
    void whatIsNotKnownEarnsNothing() {
        assertEquals(0, Criterion.score(GOOD, ALL, Map.of(Criterion.LOAD, 1)).orElseThrow(), 1e-9);
    }
}
