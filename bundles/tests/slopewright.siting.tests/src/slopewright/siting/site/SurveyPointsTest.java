package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** Files of survey points: their bytes, their hash, their places in a frame. */
class SurveyPointsTest {

    @TempDir
    private Path folder;

    private static SurveyPoints sample(List<String> ids) {
        return new SurveyPoints(false, new double[] {47.3, -89.999999999, 0}, new double[] {-11.9, 180, -180},
                new double[] {86.4, -3, 4000}, ids);
    }

    @Test
    void keepsEveryBitWithAndWithoutIds() throws IOException {
        for (List<String> ids : List.of(List.of("mast", "", "Höhe 3"), List.<String>of())) {
            byte[] bytes = sample(ids).bytes();
            Path file = Files.write(folder.resolve("a.swpoints"), bytes);
            SurveyPoints read = SurveyPoints.read(file, SurveyPoints.sha256(bytes));
            assertArrayEquals(sample(ids).north(), read.north());
            assertArrayEquals(sample(ids).east(), read.east());
            assertArrayEquals(sample(ids).elevationM(), read.elevationM());
            assertEquals(ids, read.ids());
            assertEquals(ids.isEmpty() ? "1" : "mast", read.id(0));
        }
    }

    /** The layout as the class describes it, written here by hand. */
    @Test
    void readsBytesWrittenByHand() throws IOException {
        ByteBuffer out = ByteBuffer.allocate(16 + 24 + 3);
        out.put("SWPOINT1".getBytes()).put((byte) 1).put((byte) 1).putShort((short) 0).putInt(1);
        out.putDouble(1000.25).putDouble(-20.5).putDouble(77.125).putShort((short) 1).put((byte) 'x');
        Path file = Files.write(folder.resolve("b.swpoints"), out.array());
        SurveyPoints read = SurveyPoints.read(file, SurveyPoints.sha256(out.array()));
        assertTrue(read.plane());
        assertEquals(1000.25, read.north()[0]);
        assertEquals(-20.5, read.east()[0]);
        assertEquals(77.125, read.elevationM()[0]);
        assertEquals("x", read.id(0));
        assertArrayEquals(out.array(), read.bytes());
    }

    /** The value is the one of FIPS 180-2, appendix B.1, for the letters abc. */
    @Test
    void hashesAsPublished() throws IOException {
        String published = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assertEquals(published, SurveyPoints.sha256("abc".getBytes()));
        assertEquals(published, SurveyPoints.sha256(Files.write(folder.resolve("abc"), "abc".getBytes())));
    }

    @Test
    void everyCutAndEveryChangedHeaderIsRefused() throws IOException {
        byte[] bytes = sample(List.of("a", "b", "c")).bytes();
        for (int length = 0; length < bytes.length; length++) {
            refused(Arrays.copyOf(bytes, length));
        }
        refused(Arrays.copyOf(bytes, bytes.length + 1));
        for (int at : new int[] {0, 7, 8, 9, 10, 12, 15, 16}) {
            byte[] other = bytes.clone();
            other[at] = 0x7F;
            refused(other);
        }
    }

    private void refused(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("bad.swpoints"), bytes);
        SitingException thrown = assertThrows(SitingException.class, () -> SurveyPoints.read(file, SurveyPoints.sha256(bytes)));
        assertTrue(thrown.getMessage().contains("bad.swpoints: "), thrown.getMessage());
    }

    @Test
    void aBlockIsTheOneThatWasImportedOrNone() throws IOException {
        byte[] bytes = sample(List.of()).bytes();
        Files.write(folder.resolve("c.swpoints"), bytes);
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName("Hill");
        reason(block, "it names no file");
        block.setPath("c.swpoints");
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(3);
        assertEquals(3, SurveyPoints.read(block, folder).count());
        block.setPointCount(4);
        reason(block, "holds 3 points, but the project says 4");
        block.setSha256("00");
        reason(block, "was changed or replaced");
        block.setPath("../c.swpoints");
        reason(block, "does not lie beside the project");
        block.setPath(folder.resolve("c.swpoints").toString());
        reason(block, "does not lie beside the project");
        block.setPath("d.swpoints");
        reason(block, "there is no such file");
    }

    private void reason(SurveyBlock block, String reason) {
        SitingException thrown = assertThrows(SitingException.class, () -> SurveyPoints.read(block, folder));
        assertTrue(thrown.getMessage().contains(reason), thrown.getMessage());
    }

    /** The oracle is the geodesic from the threshold of runway 09, 47.3 N 11.9 W at 86.4 m, landing toward 92 degrees. */
    @Test
    void liesInTheFrameWhereTheGeodesicSays() throws ProjectFileException {
        Project project = ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale",
                "harrow-vale.slopewright"));
        SiteFrame frame = SiteFrame.of(Projects.hosts(project).get(0));
        double[] distances = {0.001, 1000, 15000};
        double[] bearings = {92, 272 + 30, 272 - 10};
        double[] north = new double[3];
        double[] east = new double[3];
        for (int i = 0; i < 3; i++) {
            GeodesicData end = Geodesic.WGS84.Direct(47.3, -11.9, bearings[i], distances[i]);
            north[i] = end.lat2;
            east[i] = end.lon2;
        }
        SurveyPoints.InFrame points = new SurveyPoints(false, north, east, new double[] {86.4, 100, 50}, List.of()).toFrame(frame);
        for (int i = 0; i < 3; i++) {
            double angle = Math.toRadians(bearings[i] - 92);
            assertEquals(distances[i] * Math.cos(angle), points.alongM()[i], 1e-6);
            assertEquals(distances[i] * Math.sin(angle), points.rightM()[i], 1e-6);
        }
        assertArrayEquals(new double[] {0, 13.6, -36.4}, points.heightM(), 1e-9);
        SurveyPoints onPlane = new SurveyPoints(true, north, east, north, List.of());
        assertThrows(SitingException.class, () -> onPlane.toFrame(frame));
    }
}
