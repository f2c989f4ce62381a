package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.drawing.scene.Ink;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.rcp.internal.ThemeSwitch;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.theme.ScreenTheme;

/** The window in the light and in the dark. */
class ThemeTest {

    private static final double LEAST_CONTRAST_OF_LAMPS = 3;

    @TempDir
    private Path folder;

    @AfterEach
    void goBackToLight() {
        Preferences.store().setValue(Preferences.THEME, Preferences.LIGHT);
        Patience.await("the window is light", () -> !ScreenTheme.isDark());
        window().getActivePage().closeAllEditors(false);
    }

    @Test
    void thePreferenceTurnsTheWindowAndThePlanDarkAndBack() {
        Preferences.store().setValue(Preferences.THEME, Preferences.LIGHT);
        assertTrue(ProjectOpener.open(window(), DemoProjects.copy("harrow-vale", folder)));
        PlanEditor editor = (PlanEditor) window().getActivePage().getActiveEditor();
        Control plan = editor.viewer().getControl();
        Patience.await("the plan is there", () -> plan.getSize().x > 0);
        Patience.await("the plan is light", () -> brightness(plan) > 0.6);
        double windowLight = Contrast.luminance(background());
        Preferences.store().setValue(Preferences.THEME, Preferences.DARK);
        assertTrue(ScreenTheme.isDark());
        Patience.await("the widgets are dark", () -> Contrast.luminance(background()) < 0.2);
        Patience.await("the plan is dark", () -> brightness(plan) < 0.2);
        assertTrue(windowLight > 0.6, "light window " + windowLight);
        ThemeSwitch.toggle();
        assertEquals(Preferences.LIGHT, Preferences.theme());
        Patience.await("the widgets are light again", () -> Contrast.luminance(background()) > 0.6);
        Patience.await("the plan is light again", () -> brightness(plan) > 0.6);
    }

    /** What a line means is told by its colour too; those of the ground and of the grid only accompany. */
    @ParameterizedTest
    @CsvSource({"TEXT", "DIMENSION", "AXIS", "TAXIWAY", "UNIT", "SURFACE", "OBSTACLE", "PENETRATION", "GLIDE_PATH", "WHEELS", "GROUND"})
    void linesOfEveryInkAreToldFromTheGround(Ink ink) {
        for (boolean dark : new boolean[] {false, true}) {
            double contrast = Contrast.of(Inks.colour(ink, dark), Inks.colour(Ink.PAPER, dark));
            assertTrue(contrast >= Contrast.LEAST_OF_LINES, ink + " " + contrast);
        }
    }

    @Test
    void lampsAreSeenAndToldApartInTheDark() {
        List<Ink> lamps = List.of(Ink.WHITE, Ink.RED, Ink.GREEN, Ink.AMBER);
        for (Ink lamp : lamps) {
            Color colour = Inks.colour(lamp, true);
            assertTrue(Contrast.of(colour, Inks.colour(Ink.PAPER, true)) >= LEAST_CONTRAST_OF_LAMPS, lamp.name());
            lamps.stream().filter(other -> other != lamp).forEach(other -> assertNotEquals(colour, Inks.colour(other, true)));
        }
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    /** The background of the widgets of the window, as one that is made now gets it. */
    private static RGB background() {
        Shell shell = window().getShell();
        return Widgets.all(shell, Composite.class).filter(composite -> composite.getClass().getSimpleName().equals("CTabFolder"))
                .findFirst()
                .orElse(shell).getBackground().getRGB();
    }

    /** The mean luminance of what a control shows. */
    private static double brightness(Control control) {
        ImageData data = Contrast.painted(control);
        double sum = 0;
        int count = 0;
        for (int x = 0; x < data.width; x += 7) {
            for (int y = 0; y < data.height; y += 7) {
                sum += Contrast.luminance(data.palette.getRGB(data.getPixel(x, y)));
                count++;
            }
        }
        return sum / count;
    }
}
