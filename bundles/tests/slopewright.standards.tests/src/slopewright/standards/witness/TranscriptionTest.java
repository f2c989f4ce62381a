package slopewright.standards.witness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

import slopewright.standards.FreshRuleSets;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.witness.Edition;
import slopewright.witness.Entry;
import slopewright.witness.Transcription;

/** Every number that the second transcription of the rule texts holds too: the same value, and known no better than there. */
class TranscriptionTest {

    private static final int LEAST_COMPARED = 740;
    private static final int LEAST_KEYS = 290;
    private static final double SAME = 1e-12;

    @Test
    void everyNumberHeldTwiceIsTheSameAndNoneIsKnownBetter(TestReporter reporter) {
        List<String> wrong = new ArrayList<>();
        List<String> single = new ArrayList<>();
        int compared = 0;
        for (Entry entry : Transcription.entries()) {
            RuleSet rules = FreshRuleSets.find(entry.edition().key()).orElseThrow();
            List<Names.Held> held = Names.held(rules, entry);
            compared += held.size();
            if (held.isEmpty()) {
                single.add(text(entry));
            }
            Entry deciding = deciding(entry);
            for (Names.Held number : held) {
                if (Math.abs(number.value() - deciding.value()) > SAME) {
                    wrong.add(text(entry) + " is " + number.value() + " as " + number.key());
                } else if (rank(number.provenance()) < rank(Provenance.of(deciding.provenance()))) {
                    wrong.add(text(entry) + " is " + number.provenance().key() + " as " + number.key());
                }
            }
        }
        assertEquals(List.of(), wrong);
        reporter.publishEntry("compared", Integer.toString(compared));
        reporter.publishEntry("held by the second transcription alone", String.join("; ", single));
        assertTrue(compared >= LEAST_COMPARED, compared + " compared, held once: " + String.join("; ", single));
    }

    @Test
    void whatTheRuleSetsHoldAloneIsListed(TestReporter reporter) {
        int both = 0;
        for (RuleSet rules : FreshRuleSets.all()) {
            List<String> alone = new ArrayList<>(rules.values().stream().map(value -> value.key()).toList());
            int all = alone.size();
            RuleSet first = FreshRuleSets.find(rules.key()).orElseThrow();
            List<String> names = first.edition().equals(rules.edition()) ? List.of(rules.key(), rules.key() + ":" + rules.edition())
                    : List.of(rules.key() + ":" + rules.edition());
            Transcription.entries().stream().filter(entry -> names.contains(entry.edition().key()))
                    .forEach(entry -> Names.held(rules, entry).forEach(number -> alone.remove(number.key())));
            both += all - alone.size();
            reporter.publishEntry("held by " + rules.key() + ":" + rules.edition() + " alone", String.join("; ", alone));
        }
        assertTrue(both >= LEAST_KEYS, both + " keys");
    }

    /**
     * The US set of 2022 was read as quoted: where a text of the older set prints the same number, or another one and is published itself,
     * the older text decides (the note of that rule set).
     */
    private static Entry deciding(Entry entry) {
        Entry older = entry.edition() == Edition.FAA_2022
                ? Transcription.find(Edition.FAA_2010, entry.family(), entry.name()) : null;
        boolean decides = older != null && rank(Provenance.of(older.provenance())) < rank(Provenance.of(entry.provenance()));
        return decides ? older : entry;
    }

    /** What is published and what is computed from published values alone count the same: neither needs confirmation. */
    private static int rank(Provenance provenance) {
        return provenance.needsConfirmation() ? provenance.ordinal() : 0;
    }

    private static String text(Entry entry) {
        return entry.edition().key() + " " + entry.family() + " " + entry.name() + " " + entry.value() + " " + entry.provenance() + " ("
                + entry.clause() + ")";
    }
}
