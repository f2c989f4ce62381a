package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.model.ApproachAid;
import slopewright.model.Inspection;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;

/** What an electrician and a surveyor fill in on site: every line is there, beside what is expected, and no table goes over two pages. */
class CommissioningTablesTest {

    private static byte[] sheet(Project project, ApproachAid aid, Reports.Format format) throws ReportException {
        return CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS, format);
    }

    private static String page(PDDocument document, String words) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        String found = null;
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            String text = stripper.getText(document);
            if (text.contains(words)) {
                assertEquals(null, found, words + " stands on two pages");
                found = text;
            }
        }
        assertTrue(found != null, words);
        return found;
    }

    /** The demo's row is fed by a series circuit of 6.6 A in five brightness steps, each unit has 3 lamps. */
    @Test
    void whatIsTestedOnSiteHasItsLines() throws ReportException {
        Project project = Demo.project("harrow-vale");
        String text = Demo.text(new String(sheet(project, Demo.aid(project, "PAPI 09"), Reports.Format.HTML), StandardCharsets.UTF_8));
        for (String line : List.of("Weather: cloud, visibility", "Instruments, serial numbers", "Serial number Lamps burning", "of 3",
                "Light out at a tilt of", "Insulation resistance of the cable to earth", "Current at brightness step 1",
                "Current at brightness step 5 6.6 A")) {
            assertTrue(text.contains(line), line + " in " + text);
        }
        assertTrue(!text.contains("Current at brightness step 6"), text);
    }

    /** A unit with a battery of 22 to 28 V has no cable. */
    @Test
    void aBatteryHasVoltages() throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "Portable unit, north pad");
        String text = Demo.text(new String(sheet(project, aid, Reports.Format.HTML), StandardCharsets.UTF_8));
        assertTrue(text.contains("Voltage with the light on 22 to 28 V") && !text.contains("Insulation"), text);
    }

    /** Each table begins with its heading and ends with its last unit on one page. */
    @ParameterizedTest
    @CsvSource({"harrow-vale,PAPI 09,A,4", "every-family,T form,D3-right,20"})
    void noTableIsTorn(String demo, String name, String last, int units) throws ReportException, IOException {
        Project project = Demo.project(demo);
        ApproachAid aid = Demo.aid(project, name);
        assertEquals(units, aid.getUnits().size());
        try (PDDocument document = Loader.loadPDF(sheet(project, aid, Reports.Format.PDF))) {
            for (String part : List.of("\nAngles\n", "\nPlaces and levels\n", "\nSerial numbers, lamps and tilt test\n")) {
                String text = page(document, part);
                String rest = text.substring(text.indexOf(part));
                assertTrue(rest.contains("\n" + last + " "), part + " has no " + last + " in " + rest);
            }
            String text = page(document, "\nSupply\n");
            assertTrue(text.substring(text.indexOf("\nSupply\n")).contains("brightness step 5"), text);
        }
    }

    @Test
    void thereAreAsManyInspectionsAsWereMade() throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 09");
        for (String day : List.of("2026-05-01", "2026-05-08", "2026-05-15")) {
            Inspection flown = SlopewrightFactory.eINSTANCE.createInspection();
            flown.setDate(day);
            flown.setPerson("F. Ames");
            aid.getInspections().add(flown);
        }
        String text = Demo.text(new String(sheet(project, aid, Reports.Format.HTML), StandardCharsets.UTF_8));
        assertEquals(3, text.split("Inspected by F. Ames", -1).length - 1, text);
        assertEquals(3, text.split("Angle of the slope as flown", -1).length - 1, text);
    }
}
