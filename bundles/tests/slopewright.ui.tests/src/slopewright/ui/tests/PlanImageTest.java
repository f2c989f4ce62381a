package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.AddChild;
import slopewright.edit.SetAttribute;
import slopewright.model.Aerodrome;
import slopewright.model.BackgroundImage;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** Pictures under the plan: scaled by two points, or placed by the tags of a GeoTIFF. */
class PlanImageTest {

    private static final int WIDTH = 400;
    private static final int HEIGHT = 200;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        page().setPartState(page().getReference(editor), IWorkbenchPage.STATE_MAXIMIZED);
        Patience.await("the plan has a size, and so much height that the width alone says how a picture is fitted",
                () -> editor.view().widthPx() > 0 && HEIGHT / editor.view().heightPx() < 0.95 * WIDTH / editor.view().widthPx());
    }

    @AfterEach
    void close() {
        page().setPartState(page().getReference(editor), IWorkbenchPage.STATE_RESTORED);
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private List<BackgroundImage> images() {
        return plan.document().project().getAerodrome().getBackgroundImages();
    }

    private Path png() {
        ImageData data = new ImageData(WIDTH, HEIGHT, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int x = 0; x < WIDTH; x++) {
            data.setPixel(x, HEIGHT / 2, 0xff0000);
        }
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        Path file = folder.resolve("field.png");
        loader.save(file.toString(), SWT.IMAGE_PNG);
        return file;
    }

    /** Where a point of the picture lies on the screen while it is shown in the middle of the view, nine tenths as large as fits. */
    private Point onScreen(double column, double row) {
        double perPixel = 0.9 / Math.max(WIDTH / editor.view().widthPx(), HEIGHT / editor.view().heightPx());
        return new Point((int) Math.round(editor.view().widthPx() / 2 + (column - WIDTH / 2.0) * perPixel),
                (int) Math.round(editor.view().heightPx() / 2 + (row - HEIGHT / 2.0) * perPixel));
    }

    @Test
    void aPictureIsScaledByAClickedAndATypedPlace() {
        RunwayEnd one = plan.element("runway-end-1", RunwayEnd.class);
        RunwayEnd other = plan.element("runway-end-2", RunwayEnd.class);
        editor.addImage(png());
        Patience.pause(50);
        assertEquals(1, images().size());
        assertEquals("field.png", images().get(0).getPath(), "kept beside the project");
        assertEquals(64, images().get(0).getSha256().length());
        assertFalse(editor.imageField().isVisible(), "first a point of the picture is asked for");
        plan.click(onScreen(100, 100));
        assertTrue(editor.imageField().isVisible());
        Point threshold = plan.at(one);
        Patience.pause(600);
        plan.click(new Point(threshold.x + 3, threshold.y - 2));
        assertFalse(editor.imageField().isVisible());
        Patience.pause(600);
        plan.click(onScreen(300, 100));
        editor.imageField().setText("nonsense");
        editor.imageField().notifyListeners(SWT.DefaultSelection, new Event());
        assertNull(images().get(0).getSecondPlace(), "what is no place is not taken");
        Place end = other.getThreshold();
        editor.imageField().setText(String.format(Locale.ROOT, "%.8f, %.8f", end.getLatitudeDeg(), end.getLongitudeDeg()));
        editor.imageField().notifyListeners(SWT.DefaultSelection, new Event());
        assertFalse(editor.imageField().isVisible());
        BackgroundImage image = images().get(0);
        double tolerance = 2 * Math.max(WIDTH / editor.view().widthPx(), HEIGHT / editor.view().heightPx());
        assertEquals(100, image.getFirstColumnPx(), tolerance);
        assertEquals(300, image.getSecondColumnPx(), tolerance);
        assertEquals(one.getThreshold().getLatitudeDeg(), image.getFirstPlace().getLatitudeDeg(), 1e-7, "snapped to the threshold");
        assertEquals(end.getLongitudeDeg(), image.getSecondPlace().getLongitudeDeg(), 1e-7);
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertNull(image.getFirstPlace(), "scaling is one edit");
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertTrue(images().isEmpty());
        editor.viewer().getEditDomain().getCommandStack().redo();
        editor.viewer().getEditDomain().getCommandStack().redo();
        assertNotNull(images().get(0).getSecondPlace());
    }

    @Test
    void escapeEndsTheScalingAndKeepsThePicture() {
        editor.addImage(png());
        plan.click(onScreen(100, 100));
        assertTrue(editor.imageField().isVisible());
        plan.key(SWT.ESC, SWT.ESC, 0);
        assertFalse(editor.imageField().isVisible());
        assertEquals(1, images().size());
        assertNull(images().get(0).getFirstColumnPx());
    }

    @Test
    void whatIsNoPictureIsRefusedWithTheReason() throws Exception {
        Path text = Files.writeString(folder.resolve("no.png"), "this is no picture");
        editor.addImage(text);
        assertTrue(editor.notice().contains("no.png") && editor.notice().contains("no PNG"), editor.notice());
        assertTrue(images().isEmpty());
        assertFalse(editor.isDirty());
    }

    @Test
    void aPictureFromElsewhereIsCopiedBesideTheProject(@TempDir Path elsewhere) throws Exception {
        Path chosen = Files.move(png(), elsewhere.resolve("field.png"));
        editor.addImage(chosen);
        assertEquals("field.png", images().get(0).getPath());
        assertEquals(-1, Files.mismatch(chosen, folder.resolve("field.png")));
    }

    /** What a project names is not read outside its folder, and no other picture is shown in the place of the one that was scaled. */
    @Test
    void aPictureOutsideTheFolderOrAnotherThanWasLaidIsSaid(@TempDir Path elsewhere) throws Exception {
        Path outside = Files.move(png(), elsewhere.resolve("field.png"));
        Files.copy(outside, folder.resolve("other.png"));
        show(outside.toString(), null);
        Patience.await("it is said", () -> editor.notice().contains("outside the folder of the project"));
        show("other.png", "0".repeat(64));
        Patience.await("it is said", () -> editor.notice().contains("another file than was laid under the plan"));
    }

    private void show(String path, String sha256) {
        BackgroundImage image = SlopewrightFactory.eINSTANCE.createBackgroundImage();
        image.setId("image-" + images().size());
        image.setPath(path);
        image.setSha256(sha256);
        image.setFirstColumnPx(0.0);
        image.setFirstRowPx(0.0);
        image.setSecondColumnPx((double) WIDTH);
        image.setSecondRowPx(0.0);
        image.setFirstPlace(EcoreUtil.copy(plan.element("runway-end-1", RunwayEnd.class).getThreshold()));
        image.setSecondPlace(EcoreUtil.copy(plan.element("runway-end-2", RunwayEnd.class).getThreshold()));
        editor.viewer().getEditDomain().getCommandStack().execute(new HistoryCommand(
                AddChild.of(plan.document().project().getAerodrome(), SlopewrightPackage.Literals.AERODROME__BACKGROUND_IMAGES, image)));
    }

    /** Files that once made a reader fail with something else than a reason. */
    @Test
    void aDamagedPictureIsRefusedWithTheReason() throws Exception {
        Path cases = DemoProjects.root().resolve("bundles/tests/slopewright.ui.tests/cases/pictures");
        List<Path> files;
        try (Stream<Path> found = Files.list(cases)) {
            files = found.sorted().toList();
        }
        assertTrue(files.size() >= 11, files.toString());
        for (Path file : files) {
            editor.addImage(file);
            assertTrue(editor.notice().contains(file.getFileName().toString()) && editor.notice().contains("can't be read"),
                    file + ": " + editor.notice());
            assertTrue(images().isEmpty(), file.toString());
        }
        assertFalse(editor.isDirty());
    }

    /** Tie point and pixel scale as OGC 19-008r4 defines them: the corner of pixel (0, 0) lies at the tie point, rows go south. */
    @Test
    void aGeoTiffInTheReferenceOfTheProjectPlacesItself() throws Exception {
        Aerodrome aerodrome = plan.document().project().getAerodrome();
        plan.document().history().perform(SetAttribute.of(aerodrome, SlopewrightPackage.Literals.AERODROME__COORDINATE_REFERENCE,
                "EPSG:32629"));
        editor.addImage(geoTiff(32629));
        BackgroundImage image = images().get(0);
        assertEquals(0, image.getFirstColumnPx());
        assertEquals(281_000, image.getFirstPlace().getEastM(), 1e-9);
        assertEquals(5_243_000, image.getFirstPlace().getNorthM(), 1e-9);
        assertEquals(281_000 + 20 * 2.5, image.getSecondPlace().getEastM(), 1e-9);
        assertEquals(5_243_000 - 10 * 2.5, image.getSecondPlace().getNorthM(), 1e-9);
        assertTrue(editor.notice().contains("EPSG:32629"), editor.notice());
    }

    @Test
    void aGeoTiffInAnotherReferenceIsExplainedAndScaledByHand() throws Exception {
        editor.addImage(geoTiff(32630));
        assertTrue(editor.notice().contains("EPSG:32630") && editor.notice().contains("WGS84"), editor.notice());
        assertNull(images().get(0).getFirstPlace());
        plan.key(SWT.ESC, SWT.ESC, 0);
    }

    /** A grey TIFF of 20 by 10 pixels of 2.5 m, its corner at 281 000 m east and 5 243 000 m north. */
    private Path geoTiff(int epsg) throws Exception {
        int[][] tags = {{256, 3, 1, 20}, {257, 3, 1, 10}, {258, 3, 1, 8}, {259, 3, 1, 1}, {262, 3, 1, 1}, {273, 4, 1, 8}, {277, 3, 1, 1},
            {278, 3, 1, 10}, {279, 4, 1, 200}, {33550, 12, 3, 400}, {33922, 12, 6, 424}, {34735, 3, 12, 472}};
        ByteBuffer file = ByteBuffer.allocate(512).order(ByteOrder.LITTLE_ENDIAN);
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(208);
        file.position(208);
        file.putShort((short) tags.length);
        for (int[] tag : tags) {
            file.putShort((short) tag[0]).putShort((short) tag[1]).putInt(tag[2]).putInt(tag[3]);
        }
        file.putInt(0);
        file.position(400);
        file.putDouble(2.5).putDouble(2.5).putDouble(0);
        file.putDouble(0).putDouble(0).putDouble(0).putDouble(281_000).putDouble(5_243_000).putDouble(0);
        for (int key : new int[] {1, 1, 0, 2, 1025, 0, 1, 1, 3072, 0, 1, epsg}) {
            file.putShort((short) key);
        }
        return Files.write(folder.resolve("geo.tif"), file.array());
    }
}
