package slopewright.exchange.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.sheet.Sheet;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueOverride;

/** The data to publish of the demo. */
class PublishedDataTest {

    private static String cell(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).text();
    }

    /**
     * The MEHT of PAPI 27 by hand: unit B at 3 deg 20', 2' off, 278.217 m from the threshold with its lens 90.358 - 90.8 = -0.442 m there:
     * 278.217 tan 3.3 deg - 0.442 = 15.600 m. At the helipad nothing is over a threshold.
     */
    @Test
    void publishedDataNamesTheMehtWhereThereIsAThreshold() {
        ProjectEvaluation evaluation = Demo.evaluate(Demo.project());
        PublishedData data = PublishedData.of(evaluation);
        assertEquals(4, data.aids().size());
        assertEquals(15.600, data.aids().get(1).mehtM(), 0.0005);
        assertNull(data.aids().get(3).mehtM());
        Sheet sheet = data.sheet();
        assertEquals("15.60", cell(sheet, 1, "MEHT m"));
        assertEquals("51.2", cell(sheet, 1, "MEHT ft"), "15.600 / 0.3048");
        assertEquals("not applicable", cell(sheet, 1, "nominal eye height m"), "a row has none");
        assertEquals("not applicable", cell(sheet, 1, "eye height over hover point m"));
        assertEquals("PAPI", cell(sheet, 0, "type"));
        assertEquals("left", cell(sheet, 0, "side"));
        assertEquals("300.0", cell(sheet, 1, "displacement of threshold m"));
        assertEquals("not applicable", cell(sheet, 3, "MEHT m"));
        assertFalse(cell(sheet, 3, "eye height over hover point m").startsWith("not"));
    }

    /**
     * Annex 14 Vol I, 2.12 e): 2' off the setting, whatever is taken off for the siting. With nothing taken off there, the row itself
     * gives 278.217 tan 3 deg 20' - 0.442 = 15.762 m.
     */
    @Test
    void whatIsPublishedRestsOnItsOwnAllowance() {
        Project project = Demo.project();
        ValueOverride none = SlopewrightFactory.eINSTANCE.createValueOverride();
        none.setId("none");
        none.setRuleSetKey("icao:5th");
        none.setValueKey("four-unit-row.boundary-allowance-min");
        none.setValue(0.0);
        project.getOverrides().add(none);
        ProjectEvaluation evaluation = Demo.evaluate(project);
        assertEquals(15.762, evaluation.aids().get(1).siting().orThrow().mehtM(), 0.0005);
        PublishedData data = PublishedData.of(evaluation);
        assertEquals(15.600, data.aids().get(1).mehtM(), 0.0005);
        assertEquals(3.3, data.aids().get(1).onAngleDeg(), 1e-6);
        assertTrue(data.sheet().notes().stream().anyMatch(note -> note.contains("2 min are taken off") && note.contains("2.12 e)")),
                data.sheet().notes().toString());
    }
}
