package slopewright.exchange.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.sheet.Sheet;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueOverride;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;

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
        Sheet sheet = data.sheet(Demo.ENGLISH);
        assertEquals("15.60", cell(sheet, 1, "MEHT m"));
        assertEquals("51.2", cell(sheet, 1, "MEHT ft"), "15.600 / 0.3048");
        assertEquals("not applicable", cell(sheet, 1, "nominal eye height m"), "a row has none");
        assertEquals("not applicable", cell(sheet, 1, "eye height over hover point m"));
        assertEquals("PAPI", cell(sheet, 0, "type"));
        assertEquals("left", cell(sheet, 0, "side"));
        assertEquals("300.0", cell(sheet, 1, "displacement of threshold m"));
        assertEquals("not applicable", cell(sheet, 3, "MEHT m"));
        assertFalse(cell(sheet, 3, "eye height over hover point m").startsWith("not"));
        assertEquals("PAPI, left, 3.50\u00b0, MEHT 15.60 m (51 ft), threshold displaced 300 m", cell(sheet, 1, "wording for the AIP"));
        assertFalse(cell(sheet, 3, "wording for the AIP").contains("MEHT"), "no threshold");
        double latitude = Double.parseDouble(cell(sheet, 0, "latitude deg"));
        String published = cell(sheet, 0, "latitude as published");
        assertTrue(published.matches("4718\\d{2}\\.\\d{2}N"), published);
        assertEquals(latitude, 47 + 18 / 60.0 + Double.parseDouble(published.substring(4, 9)) / 3600, 2e-6);
        assertTrue(cell(sheet, 0, "longitude as published").matches("01153\\d{2}\\.\\d{2}W"), cell(sheet, 0, "longitude as published"));
    }

    /** The features hold the same numbers, the properties in the order of the schema; the helipad is named and left out. */
    @Test
    void aixmHoldsWhatIsPublished() throws Exception {
        Project project = Demo.project();
        project.getAerodrome().getRunways().get(1).getEnds().get(0).getAids().get(0).getUnits().clear();
        byte[] bytes = AixmFile.bytes(PublishedData.of(Demo.evaluate(project)), project, MadeFrom.of(Demo.evaluate(project)),
                LocalDate.of(2026, 6, 1), Demo.ENGLISH);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        var slices = document.getElementsByTagNameNS("http://www.aixm.aero/schema/5.1", "VisualGlideSlopeIndicatorTimeSlice");
        assertEquals(3, slices.getLength());
        List<String> names = new ArrayList<>();
        Element second = (Element) slices.item(1);
        for (Node child = second.getFirstChild(); child != null; child = child.getNextSibling()) {
            names.add(child.getLocalName());
        }
        assertEquals(List.of("validTime", "interpretation", "sequenceNumber", "correctionNumber", "type", "position", "numberBox",
                "portable", "slopeAngle", "minimumEyeHeightOverThreshold", "runwayDirection"), names);
        Element height = (Element) second.getElementsByTagNameNS("*", "minimumEyeHeightOverThreshold").item(0);
        assertEquals("15.60", height.getTextContent());
        assertEquals("M", height.getAttribute("uom"));
        assertEquals("PAPI", second.getElementsByTagNameNS("*", "type").item(0).getTextContent());
        Element unknown = (Element) ((Element) slices.item(2)).getElementsByTagNameNS("*", "minimumEyeHeightOverThreshold").item(0);
        assertEquals("true", unknown.getAttributeNS("http://www.w3.org/2001/XMLSchema-instance", "nil"), "never a number that nobody gave");
        assertTrue(new String(bytes, StandardCharsets.UTF_8).contains("not here: Portable unit, north pad"));
    }

    /**
     * The code list of the published schema (CodeVASISBaseType), written down here: every family that stands at runways has one of its
     * codes, and a row of two bars with four units is the abbreviated one.
     */
    @Test
    void everyTypeIsOneOfThePublishedCodes() throws Exception {
        Set<String> codes = Set.of("PAPI", "APAPI", "HAPI", "VASIS", "AVASIS", "TVASIS", "ATVASIS", "3B_VASIS", "3B_AVASIS", "3B_ATVASIS",
                "PVASI", "TRCV", "PNI", "ILU", "OLS", "LCVASI");
        Project project = DemoProjects.load("every-family");
        String written = new String(AixmFile.bytes(PublishedData.of(Demo.evaluate(project)), project, MadeFrom.of(Demo.evaluate(project)),
                LocalDate.of(2026, 6, 1), Demo.ENGLISH), StandardCharsets.UTF_8);
        List<String> types = Pattern.compile("<aixm:type>([^<]*)<").matcher(written).results().map(found -> found.group(1)).toList();
        assertEquals(9, types.size(), types.toString());
        assertTrue(codes.containsAll(types), types.toString());
        assertEquals(Projects.aids(project).stream().filter(aid -> aid.getFamilyKey().equals("two-bar") && aid.getUnits().size() < 12)
                .count(), types.stream().filter("AVASIS"::equals).count());
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
        none.setRuleSetKey("icao:9th");
        none.setValueKey("four-unit-row.boundary-allowance-min");
        none.setValue(0.0);
        project.getOverrides().add(none);
        ProjectEvaluation evaluation = Demo.evaluate(project);
        assertEquals(15.762, evaluation.aids().get(1).siting().orThrow().mehtM(), 0.0005);
        PublishedData data = PublishedData.of(evaluation);
        assertEquals(15.600, data.aids().get(1).mehtM(), 0.0005);
        assertEquals(3.3, data.aids().get(1).onAngleDeg(), 1e-6);
        assertTrue(data.sheet(Demo.ENGLISH).notes().stream().anyMatch(note -> note.contains("2 min are taken off")
                && note.contains("2.12 e)")),
                data.sheet(Demo.ENGLISH).notes().toString());
    }
}
