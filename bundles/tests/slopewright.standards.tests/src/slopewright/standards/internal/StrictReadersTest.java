package slopewright.standards.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.StandardsException;

/** Spoilt copies of the data: each fault is refused with file, line and reason. */
class StrictReadersTest {

    private final Map<String, String> spoilt = new HashMap<>();

    private InputStream open(String path) {
        String text = spoilt.containsKey(path) ? spoilt.get(path) : bundled(path);
        return text == null ? null : new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String bundled(String path) {
        try (InputStream in = RuleSetLoader.class.getResourceAsStream("/data/" + path)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void spoil(String file, String what, String with) {
        String text = bundled(file);
        assertTrue(text.contains(what), file + " holds " + what);
        spoilt.put(file, text.replace(what, with));
    }

    private String refusal() {
        return assertThrows(StandardsException.class, () -> new RuleSetLoader(this::open).loadAll()).getMessage();
    }

    @Test
    void theDataAsTheyAreLoad() {
        assertEquals(6, new RuleSetLoader(this::open).loadAll().size());
    }

    /** Every length of a value printed in metres, printed in feet instead: each rule set reads the same, to a nanometre. */
    @Test
    void aRuleSetInFeetIsTheOneInMetres() {
        List<RuleSet> metres = new RuleSetLoader(this::open).loadAll();
        Pattern row = Pattern.compile("(?m)^([^,\\n]+-m),([^,\\n]+),m,");
        int lengths = 0;
        for (RuleSet rules : metres) {
            String file = rules.key() + "/" + rules.edition() + "/values.csv";
            Matcher found = row.matcher(bundled(file));
            StringBuilder text = new StringBuilder();
            while (found.find()) {
                BigDecimal feet = new BigDecimal(found.group(2)).divide(new BigDecimal("0.3048"), MathContext.DECIMAL64);
                found.appendReplacement(text, found.group(1) + "," + feet.toPlainString() + ",ft,");
                lengths++;
            }
            spoilt.put(file, found.appendTail(text).toString());
        }
        assertTrue(lengths > 100, lengths + " lengths");
        List<RuleSet> feet = new RuleSetLoader(this::open).loadAll();
        for (int i = 0; i < metres.size(); i++) {
            assertEquals(metres.get(i).values().size(), feet.get(i).values().size());
            for (CitedValue value : metres.get(i).values()) {
                CitedValue other = feet.get(i).value(value.key());
                assertEquals(value.value(), other.value(), 1e-9, value.key());
                assertEquals(value.unit(), other.unit(), value.key());
                assertEquals(value.citation().provenance(), other.citation().provenance(), value.key());
            }
        }
    }

    /** The Australian rule set stands over the older one of ICAO, and on no other. */
    @Test
    void oneRuleSetIsReadWithThoseItInheritsFromAlone() {
        for (String other : List.of("easa/2022", "faa/2010", "faa/2022", "icao/9th")) {
            spoilt.put(other + "/values.csv", null);
        }
        RuleSetLoader loader = new RuleSetLoader(this::open);
        assertEquals("casa", loader.find("casa", "guide").orElseThrow().key());
        assertSame(loader.find("casa", "guide").orElseThrow(), loader.findUsual("casa").orElseThrow());
        assertThrows(StandardsException.class, () -> loader.findUsual("icao"));
        assertTrue(loader.find("casa", "handbook").isEmpty());
        assertTrue(loader.findUsual("cas").isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "icao/5th/tab-5-2.csv; minimum_clearance_m; minimal_clearance_m; icao/5th/tab-5-2.csv:5: expected the columns",
        "icao/5th/tab-5-2.csv; 3,5,9,4,-; 3.5,5,9,4,-; icao/5th/tab-5-2.csv:7: the band starts at 3.5 where the one before it ends at 3",
        "icao/5th/tab-5-2.csv; 0,3,6,3,1.5; 1,3,6,3,1.5; icao/5th/tab-5-2.csv:6: the band starts at 1 where",
        "icao/5th/tab-5-2.csv; 5,8,9,5,-; 5,5,9,5,-; icao/5th/tab-5-2.csv:8: the band ends at 5, not",
        "icao/5th/tab-5-2.csv; 8,14,9,6,-; 8,14,nine,6,-; icao/5th/tab-5-2.csv:9: desired_clearance_m: 'nine' is not a number",
        "icao/5th/tab-5-2.csv; 8,14,9,6,-; '8,14,9,,-'; icao/5th/tab-5-2.csv:9: minimum_clearance_m: '' is not a number",
        "icao/5th/tab-5-2.csv; 8,14,9,6,-; 8,14,9,6; icao/5th/tab-5-2.csv:9: holds 4 fields where 5",
        "icao/5th/tab-5-2.csv; # source: rd862-i; # source: nobody; icao/5th/tab-5-2.csv:2: the source nobody",
        "icao/5th/tab-5-2.csv; # provenance: published; # provenance: rumour; icao/5th/tab-5-2.csv:4: provenance: 'rumour' is no proven",
        "icao/5th/tab-5-2.csv; # clause: Table; # paragraph: Table; icao/5th/tab-5-2.csv:1: the head line '# clause:' is missing",
        "icao/5th/tab-5-2.csv; # title: @table.wheel; # @table.wheel; icao/5th/tab-5-2.csv:1: a head line reads",
        "icao/5th/tab-5-1.csv; 1200,2400,300; 1300,2400,300; icao/5th/tab-5-1.csv:8: the band starts at 1300 where",
        "icao/5th/tab-5-3.csv; # start: threshold; # start: treshold; icao/5th/tab-5-3.csv:5: the surface starts from",
        "icao/5th/tab-5-3.csv; # start: threshold; # begin: threshold; icao/5th/tab-5-3.csv:1: the head line '# start:' is missing",
        "icao/5th/tab-5-3.csv; visual,2,80; visual,1,80; icao/5th/tab-5-3.csv:8: the column for this approach and code number",
        "icao/5th/tab-5-3.csv; visual,2,80; visual,2.5,80; icao/5th/tab-5-3.csv:8: the column for this approach and code number",
        "icao/5th/tab-5-3.csv; visual,2,80; night,2,80; icao/5th/tab-5-3.csv:8: approach is visual or instrument",
        "easa/2022/tab-m-2.csv; 60,30,10,7500,-,0.57,0.9,-,-,published,published; 60,30,10,7500,-,0.57,0.9,-,-,printed,published; "
            + "easa/2022/tab-m-2.csv:7: dimension_provenance: 'printed' is no provenance",
        "icao/5th/tab-ii-5-1.csv; visual,3; day,3; icao/5th/tab-ii-5-1.csv:6: approach is visual or non-precision",
        "faa/2010/tab-3-3.csv; 2,15,45; 3,15,45; faa/2010/tab-3-3.csv:7: group 2 is expected here",
        "casa/guide/values.csv; 1.9,deg; 1.9,volts; casa/guide/values.csv:3: 'volts' is no unit",
        "casa/guide/values.csv; casa-vfrg; hearsay; casa/guide/values.csv:2: the source hearsay is not listed",
        "casa/guide/values.csv; published,; guess,; casa/guide/values.csv:2: provenance: 'guess' is no provenance",
        "casa/guide/values.csv; height-m,49; height-m,NaN; casa/guide/values.csv:2: value: 'NaN' is not a number",
        "casa/guide/values.csv; 'published,'; 'published,\"'; casa/guide/values.csv:2: a double quote is not closed",
        "sources.csv; rd1070; rd862-i; sources.csv:4: the source rd862-i is listed twice",
        "icao/5th/rule-set.properties; surface=table; surface=tabel; icao/5th/rule-set.properties: surface is table or angular",
        "icao/5th/rule-set.properties; edition=5th; edition=4th; icao/5th/rule-set.properties: holds icao, edition 4th, which is not what",
        "icao/5th/rule-set.properties; numbering=outer-first; numbering=; icao/5th/rule-set.properties: gives no numbering",
        "casa/guide/rule-set.properties; as=from-memory; as=hearsay; casa/guide/rule-set.properties: inherits.as: 'hearsay'",
        "rule-sets.txt; icao/5th; icao/6th; icao/6th/rule-set.properties: is missing"})
    void faultsAreRefusedWithFileAndLine(String file, String what, String with, String message) {
        spoil(file, what, with);
        String refusal = refusal();
        assertTrue(refusal.startsWith(message), refusal);
    }

    /** A size of nothing lets everything pass: no surface is as short as that, and no wheel clears by less than nothing. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "icao/5th/tab-5-2.csv; 3,5,9,4,-; 3,5,9,0,-; icao/5th/tab-5-2.csv:7: minimum_clearance_m is 0, not above zero",
        "icao/5th/tab-5-2.csv; 3,5,9,4,-; 3,5,9,-4,-; icao/5th/tab-5-2.csv:7: minimum_clearance_m is -4, not above zero",
        "icao/5th/tab-5-2.csv; 3,5,9,4,-; 3,5,0,4,-; icao/5th/tab-5-2.csv:7: desired_clearance_m is 0, not above zero",
        "icao/5th/tab-5-2.csv; 3,5,9,4,-; 3,5,4,9,-; icao/5th/tab-5-2.csv:7: the clearance that is desired, 4, is below the least, 9",
        "icao/5th/tab-5-2.csv; 0,3,6,3,1.5; 0,3,6,3,0; icao/5th/tab-5-2.csv:6: light_aeroplane_clearance_m is 0, not above zero",
        "icao/5th/tab-5-1.csv; 800,1200,250; 800,1200,0; icao/5th/tab-5-1.csv:7: distance_m is 0, not above zero",
        "icao/5th/tab-5-3.csv; visual,2,80,; visual,2,0,; icao/5th/tab-5-3.csv:8: inner_edge_m is 0, not above zero",
        "icao/5th/tab-5-3.csv; visual,2,80,60,; visual,2,80,-60,; icao/5th/tab-5-3.csv:8: start_m is -60, below zero",
        "icao/5th/tab-5-3.csv; visual,2,80,60,10,; visual,2,80,60,-10,; icao/5th/tab-5-3.csv:8: divergence_percent is -10, below zero",
        "icao/5th/tab-5-3.csv; 10,7500,1.9,; 10,0,1.9,; icao/5th/tab-5-3.csv:8: total_length_m is 0, not above zero",
        "icao/5th/tab-5-3.csv; 10,7500,1.9,; 10,7500,-1.9,; icao/5th/tab-5-3.csv:8: t_form_slope_deg is -1.9, below zero",
        "icao/5th/tab-5-3.csv; 1.9,0.57,0.9,150; 1.9,-0.57,0.9,150; icao/5th/tab-5-3.csv:8: four_unit_row_below_a_deg is -0.57, below zero",
        "icao/5th/tab-5-3.csv; 1.9,0.57,0.9,150; 1.9,0.57,-0.9,150; icao/5th/tab-5-3.csv:8: two_unit_row_below_a_deg is -0.9, below zero",
        "icao/5th/tab-5-3.csv; 0.9,150,15000; 0.9,0,15000; icao/5th/tab-5-3.csv:8: t_form_inner_edge_m is 0, not above zero",
        "icao/5th/tab-5-3.csv; 0.9,150,15000; 0.9,150,0; icao/5th/tab-5-3.csv:8: t_form_total_length_m is 0, not above zero",
        "icao/5th/tab-ii-5-1.csv; visual,3,10,2500; visual,3,10,0; icao/5th/tab-ii-5-1.csv:6: total_length_m is 0, not above zero",
        "icao/5th/tab-ii-5-1.csv; visual,3,10,2500; visual,-3,10,2500; icao/5th/tab-ii-5-1.csv:6: distance_from_fato_m is -3, below zero",
        "icao/5th/tab-ii-5-1.csv; visual,3,10,2500; visual,3,-10,2500; icao/5th/tab-ii-5-1.csv:6: divergence_percent is -10, below zero",
        "icao/5th/tab-ii-5-1.csv; 2500,0.57,; 2500,-0.57,; icao/5th/tab-ii-5-1.csv:6: four_unit_row_below_a_deg is -0.57, below zero",
        "icao/5th/tab-ii-5-1.csv; non-precision,; visual,; icao/5th/tab-ii-5-1.csv:7: the row for this approach is there twice",
        "faa/2010/tab-3-3.csv; 2,15,45,5,20; 2,0,45,5,20; faa/2010/tab-3-3.csv:7: cockpit_to_wheel_ft is 0, not above zero",
        "faa/2010/tab-3-3.csv; 2,15,45,5,20; 2,15,0,5,20; faa/2010/tab-3-3.csv:7: crossing_height_ft is 0, not above zero",
        "faa/2010/tab-3-3.csv; 2,15,45,5,20; 2,15,45,-5,20; faa/2010/tab-3-3.csv:7: tolerance_above_ft is -5, below zero",
        "faa/2010/tab-3-3.csv; 2,15,45,5,20; 2,15,45,5,-20; faa/2010/tab-3-3.csv:7: tolerance_below_ft is -20, below zero"})
    void sizesThatLetEverythingPassAreRefused(String file, String what, String with, String message) {
        spoil(file, what, with);
        String refusal = refusal();
        assertTrue(refusal.startsWith(message), refusal);
    }

    @Test
    void aValueListedTwiceIsRefused() {
        String text = bundled("casa/guide/values.csv");
        String row = text.strip().lines().skip(1).findFirst().orElseThrow();
        spoilt.put("casa/guide/values.csv", text + row + "\n");
        long last = text.strip().lines().count() + 1;
        assertEquals("casa/guide/values.csv:" + last + ": the value t-form.nominal-eye-height-m is listed twice", refusal());
    }

    @Test
    void aFileWithoutRowsIsRefused() {
        spoilt.put("icao/5th/tab-5-1.csv", "# title: x\nlanding_distance_from_m,landing_distance_below_m,distance_m\n");
        assertEquals("icao/5th/tab-5-1.csv:2: holds no rows", refusal());
    }

    @Test
    void anEmptyFileIsRefused() {
        spoilt.put("icao/5th/values.csv", "");
        assertTrue(refusal().startsWith("icao/5th/values.csv"));
    }

    @Test
    void aMissingFileIsRefused() {
        spoilt.put("easa/2022/values.csv", null);
        assertEquals("easa/2022/values.csv: is missing", refusal());
    }

    @Test
    void aRuleSetInheritsFromOneThatIsThere() {
        spoil("icao/9th/rule-set.properties", "inherits=icao/5th", "inherits=icao/1st");
        assertTrue(refusal().startsWith("icao/9th/rule-set.properties: inherits from icao/1st, which is not there"), refusal());
    }

    @Test
    void aRuleSetDoesNotInheritFromItself() {
        spoil("icao/9th/rule-set.properties", "inherits=icao/5th", "inherits=icao/9th");
        assertTrue(refusal().startsWith("icao/9th/rule-set.properties: inherits from itself"), refusal());
    }

    @Test
    void contoursOfIntensityGoOutwardAndGrowWeaker() {
        spoil("icao/9th/fig-a2-23.csv", "four-unit-row,red,any,stadium,10000,4,2.5", "four-unit-row,red,any,stadium,16000,4,2.5");
        assertTrue(refusal().startsWith("icao/9th/fig-a2-23.csv:7: a contour lies inside the one before it, or is not weaker"), refusal());
    }

    @Test
    void quotedFieldsMayHoldCommasAndQuotes() {
        spoil("icao/9th/values.csv", "published,@note.equal-settings", "published,\"equal, \"\"or alike\"\" settings\"");
        String note = new RuleSetLoader(this::open).loadAll().get(0).value("four-unit-row.both-sides-difference-min").citation().note()
                .english();
        assertEquals("equal, \"or alike\" settings", note);
    }
}
