package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;

/** Metres to pixels and back. */
class WorldViewTest {

    private final WorldView view = new WorldView();

    WorldViewTest() {
        view.resize(800, 600);
        view.show(new WorldBox(0, 0, 400, 200), 0);
    }

    @Test
    void aBoxIsShownAsLargeAsItFitsWithNorthUp() {
        assertEquals(2, view.scale(), 1e-12);
        assertEquals(0, view.toX(0), 1e-9);
        assertEquals(800, view.toX(400), 1e-9);
        assertEquals(300, view.toY(100), 1e-9);
        assertTrue(view.toY(200) < view.toY(0), "up is up");
    }

    @Test
    void pixelsComeBackAsMetres() {
        assertEquals(123.4, view.worldX(view.toX(123.4)), 1e-9);
        assertEquals(-56.7, view.worldY(view.toY(-56.7)), 1e-9);
    }

    @Test
    void whatWasFittedIsFittedAgainAfterAResizeUnlessItWasMoved() {
        view.resize(400, 300);
        assertEquals(1, view.scale(), 1e-12);
        view.pan(10, 0);
        double middle = view.worldX(200);
        view.resize(800, 600);
        assertEquals(1, view.scale(), 1e-12);
        assertEquals(middle, view.worldX(400), 1e-9);
    }

    @Test
    void zoomingKeepsThePlaceUnderThePointer() {
        double x = view.worldX(650);
        double y = view.worldY(20);
        view.zoomAt(650, 20, 3);
        assertEquals(6, view.scale(), 1e-12);
        assertEquals(x, view.worldX(650), 1e-9);
        assertEquals(y, view.worldY(20), 1e-9);
        view.zoomAt(0, 0, 1e9);
        assertEquals(WorldView.GREATEST_SCALE, view.scale());
        view.zoomAt(0, 0, 1e-12);
        assertEquals(WorldView.LEAST_SCALE, view.scale());
    }

    @Test
    void exaggerationStretchesHeightsOnly() {
        double x = view.toX(300);
        view.setExaggeration(4);
        assertEquals(x, view.toX(300), 1e-9);
        assertEquals(2 * 4 * 10, view.toY(100) - view.toY(110), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> view.setExaggeration(0));
    }

    @Test
    void listenersAreToldOfEachChange() {
        int[] told = {0};
        Runnable listener = () -> told[0]++;
        view.addListener(listener);
        view.pan(1, 1);
        view.zoom(1.1);
        assertEquals(2, told[0]);
        view.removeListener(listener);
        view.pan(1, 1);
        assertEquals(2, told[0]);
    }
}
