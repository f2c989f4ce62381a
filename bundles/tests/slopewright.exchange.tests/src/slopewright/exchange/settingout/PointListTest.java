package slopewright.exchange.settingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

import slopewright.exchange.Demo;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.siting.SitingException;

/** The lenses as points for a total station. */
class PointListTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    private static Project onGrid() {
        Project project = Demo.project();
        project.getAerodrome().setCoordinateReference("EPSG:32629");
        return project;
    }

    /** Spacing of the row at 09 on the ground 9 m; the scale of zone 29 at easting 281 km is 0.99960 + 0.00059, so 9.0017 m on the grid. */
    @Test
    void pnezdHoldsNorthingFirstAndEveryUnit() {
        List<String> lines = new String(PointList.of(Demo.evaluate(onGrid()), DAY).pnezd(Demo.ENGLISH), StandardCharsets.US_ASCII)
                .lines().toList();
        assertEquals(4 + 4 + 2 + 1, lines.size());
        String[] first = lines.get(0).split(",");
        String[] second = lines.get(1).split(",");
        assertEquals("1", first[0]);
        assertTrue(Double.parseDouble(first[1]) > 5_000_000, "northing at 47 degrees");
        assertTrue(Double.parseDouble(first[2]) < 500_000, "easting west of the meridian of zone 29");
        assertEquals("87.131", first[3]);
        assertTrue(first[4].startsWith("lens of PAPI 09 unit D set to 3d35'; slopewright " + Program.VERSION + "  project file "),
                first[4]);
        double scale = 0.9996 * (1 + Math.pow((500_000 - 281_103) / 0.9996, 2) / (2 * 6.38e6 * 6.38e6));
        assertEquals(9 * scale, Math.hypot(Double.parseDouble(first[1]) - Double.parseDouble(second[1]), Double.parseDouble(first[2])
                - Double.parseDouble(second[2])), 0.002);
    }

    @Test
    void landXmlHoldsTheSamePointsAndWhereTheyComeFrom() throws Exception {
        PointList points = PointList.of(Demo.evaluate(onGrid()), DAY);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(points.landXml(DAY, Demo.ENGLISH)));
        String space = "http://www.landxml.org/schema/LandXML-1.2";
        assertEquals(space, document.getDocumentElement().getNamespaceURI());
        List<String> lines = new String(points.pnezd(Demo.ENGLISH), StandardCharsets.US_ASCII)
                .lines().toList();
        var found = document.getElementsByTagNameNS(space, "CgPoint");
        assertEquals(lines.size(), found.getLength());
        for (int i = 0; i < lines.size(); i++) {
            String[] line = lines.get(i).split(",");
            assertEquals(line[1] + " " + line[2] + " " + line[3], found.item(i).getTextContent());
        }
        assertEquals("32629", ((Element) document.getElementsByTagNameNS(space, "CoordinateSystem").item(0)).getAttribute("epsgCode"));
        assertEquals(Program.VERSION, ((Element) document.getElementsByTagNameNS(space, "Application").item(0)).getAttribute("version"));
    }

    /** No unit is left out without a word. */
    @Test
    void withoutAGridOrALevelThereAreNoPoints() {
        assertTrue(assertThrows(SitingException.class, () -> PointList.of(Demo.evaluate(Demo.project()), DAY)).getMessage()
                .contains("has no place on a grid"));
        Project project = onGrid();
        project.getAerodrome().getRunways().get(0).getEnds().get(0).getAids().get(0).getUnits().get(2).setLensElevationM(null);
        assertTrue(assertThrows(SitingException.class, () -> PointList.of(Demo.evaluate(project), DAY)).getMessage()
                .contains("unit B has no lens elevation"));
    }
}
