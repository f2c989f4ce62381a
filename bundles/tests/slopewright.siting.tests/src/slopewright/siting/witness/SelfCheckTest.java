package slopewright.siting.witness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.witness.SelfCheck;

/** The second implementation gives the worked examples and figures that the rule texts print. */
class SelfCheckTest {

    private static final int LEAST_FIGURES = 900;

    @Test
    void thePrintedFiguresComeOut() {
        SelfCheck.Outcome outcome = SelfCheck.run();
        assertEquals(List.of(), outcome.wrong());
        assertTrue(outcome.total() >= LEAST_FIGURES, outcome.total() + " figures");
    }
}
