package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import slopewright.standards.Provenance;

/** Which of its sources an outcome names. */
class CitationOrderTest {

    /**
     * The inner unit of a row 4 m nearer to the runway than 15 m, beyond the tolerance of 1 m of Fig 5-19: met by what the project puts in
     * its place alone, and so the outcome names that, whatever else it rests on was confirmed.
     */
    @Test
    void whatIsMetByAnOverrideSaysSo() {
        Sample sample = Bases.rowOfToday();
        sample.units(unit -> unit.setRightM(unit.getRightM() + 4));
        assertEquals(Verdict.NOT_MET, sample.outcomes("ROW-03").get(0).verdict());
        sample.override("four-unit-row.inner-unit-to-edge-tolerance-m", 4.5);
        Outcome met = sample.outcomes("ROW-03").get(0);
        assertEquals(Verdict.MET, met.verdict());
        assertEquals(Provenance.OVERRIDE, met.citation().orElseThrow().provenance());
    }
}
