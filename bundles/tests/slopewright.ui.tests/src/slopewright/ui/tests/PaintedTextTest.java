package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.text.TextFlow;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.DirectionsView;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.theme.Lettering;
import slopewright.ui.theme.ScreenTheme;

/** What the product paints itself (plan, palette, section, pilot's view, charts) is read in the light and in the dark. */
class PaintedTextTest {
    private static final int LEAST_WIDTH = 4;
    private static final int EDGE_PX = 6;
    /** A busy machine paints late; what is faint stays so. */
    private static final int MOST_TRIES = 5;

    private static final int BAR_PX = 22;

    @TempDir
    private Path folder;
    private final List<String> faint = new ArrayList<>();
    private int looked;
    private double least = Double.MAX_VALUE;

    @AfterEach
    void goBackToLight() {
        Preferences.store().setValue(Preferences.THEME, Preferences.LIGHT);
        Patience.await("the window is light", () -> !ScreenTheme.isDark());
        page().closeAllEditors(false);
        List.of(SectionView.ID, PilotView.ID, DirectionsView.ID, ComparisonView.ID)
                .forEach(id -> page().hideView(page().findView(id)));
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static Shell shell() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
    }

    @ParameterizedTest
    @ValueSource(strings = {Preferences.LIGHT, Preferences.DARK})
    void everyPaintedTextIsToldFromItsGround(String theme, TestReporter report) throws Exception {
        Preferences.store().setValue(Preferences.THEME, theme);
        Patience.await("the window is as it shall be", () -> ScreenTheme.isDark() == theme.equals(Preferences.DARK));
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale-faults", folder)),
                PlanEditor.ID);
        PlanDriver plan = new PlanDriver(editor);
        Patience.await("the project is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
        plan(editor, plan);
        palette(editor.viewer().getEditDomain().getPaletteViewer());
        page().showView(SectionView.ID);
        painted("section", 1);
        SectionView section = (SectionView) page().findView(SectionView.ID);
        section.canvas().control().notifyListeners(SWT.KeyDown, arrow());
        painted("section with a reading", 2);
        PilotView pilot = (PilotView) page().showView(PilotView.ID);
        Patience.await("the pilot's view shows what is seen", () -> lights().isPresent());
        Combo lights = lights().orElseThrow();
        for (int i = 0; i < lights.getItemCount(); i++) {
            lights.select(i);
            lights.notifyListeners(SWT.Selection, new Event());
            painted("pilot's view, " + lights.getText(), 1);
        }
        pilot.advance(30);
        painted("pilot's view under way", 1);
        Projects.aids(plan.document().project()).stream().filter(aid -> Projects.runway(Projects.host(aid).orElseThrow()).isEmpty())
                .forEach(aid -> plan.document().viewState().choose(aid.getId()));
        page().showView(DirectionsView.ID);
        painted("landing directions", 1);
        plan.document().viewState().choose(Projects.aids(plan.document().project()).get(0).getId());
        ComparisonView comparison = (ComparisonView) page().showView(ComparisonView.ID);
        Widgets.all(comparison.viewer().getTable().getParent().getParent(), Button.class).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
        painted("comparison", 1);
        assertEquals(List.of(), faint);
        Contrast.record(report, "what is painted", theme, least);
    }

    /** The choice of the light by which the pilot looks. */
    private static Optional<Combo> lights() {
        return Widgets.all(shell(), Combo.class)
                .filter(combo -> combo.getItemCount() == 3 && combo.isVisible() && combo.getItem(0).equals("Day")).findFirst();
    }

    /** The menu of the plan as the toolkit shows it: each entry that can be chosen is a band of rows. */
    @ParameterizedTest
    @ValueSource(strings = {Preferences.LIGHT, Preferences.DARK})
    void everyEntryOfAMenuIsToldFromItsGround(String theme, TestReporter report) throws Exception {
        Preferences.store().setValue(Preferences.THEME, theme);
        Patience.await("the window is as it shall be", () -> ScreenTheme.isDark() == theme.equals(Preferences.DARK));
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        Menu menu = editor.viewer().getContextMenu().createContextMenu(editor.viewer().getControl());
        Point at = editor.viewer().getControl().toDisplay(60, 30);
        menu.setLocation(at);
        menu.setVisible(true);
        Patience.pause(1500);
        ImageData picture = Contrast.onScreen(new Rectangle(at.x + 4, at.y + 4, 240, 600));
        List<MenuItem> items = Stream.of(menu.getItems()).filter(item -> (item.getStyle() & SWT.SEPARATOR) == 0).toList();
        List<Boolean> enabled = items.stream().map(MenuItem::isEnabled).toList();
        List<String> texts = items.stream().map(MenuItem::getText).toList();
        List<Rectangle> bands = Contrast.bands(picture, items.size());
        int chosen = enabled.indexOf(true);
        ImageData pointedAt = bands.size() > chosen ? pointed(at, bands.get(chosen)) : picture;
        menu.setVisible(false);
        assertEquals(items.size(), bands.size(), texts + " in " + bands);
        note("menu, pointed at", texts.get(chosen), Contrast.in(pointedAt, bands.get(chosen)));
        assertNotEquals(middle(picture, bands.get(chosen)), middle(pointedAt, bands.get(chosen)), "it stands out");
        assertEquals(ScreenTheme.isDark(), Contrast.luminance(picture.palette.getRGB(picture.getPixel(2, 2))) < 0.2, "ground of the menu");
        for (int i = 0; i < bands.size(); i++) {
            if (enabled.get(i)) {
                note("menu", texts.get(i), Contrast.in(picture, bands.get(i)));
            }
        }
        assertTrue(looked > 5, looked + " entries");
        assertEquals(List.of(), faint);
        Contrast.record(report, "a menu", theme, least);
    }

    /** The bar of the menus, which is as light or as dark as the window right after each change of the theme. */
    @Test
    void theMenuBarTurnsWithTheWindow() {
        for (String theme : List.of(Preferences.DARK, Preferences.LIGHT, Preferences.DARK)) {
            Preferences.store().setValue(Preferences.THEME, theme);
            Patience.pause(800);
            Point inside = shell().toDisplay(0, 0);
            ImageData picture = Contrast.onScreen(new Rectangle(inside.x + 2, inside.y - BAR_PX, 300, BAR_PX - 4));
            boolean dark = Contrast.luminance(picture.palette.getRGB(picture.getPixel(298, 2))) < 0.2;
            assertEquals(theme.equals(Preferences.DARK), dark, theme);
            note("menu bar", theme, Contrast.in(picture, new Rectangle(0, 0, picture.width, picture.height)));
        }
        assertEquals(List.of(), faint);
    }

    /** The menu while the mouse is over one of its entries. */
    private static ImageData pointed(Point at, Rectangle band) {
        Event move = new Event();
        move.type = SWT.MouseMove;
        for (int step = 0; step < 3; step++) {
            move.x = at.x + 60 + step;
            move.y = at.y + 4 + band.y + band.height / 2;
            shell().getDisplay().post(move);
            Patience.pause(200);
        }
        return Contrast.onScreen(new Rectangle(at.x + 4, at.y + 4, 240, 600));
    }

    private static RGB middle(ImageData picture, Rectangle band) {
        return picture.palette.getRGB(picture.getPixel(band.x + band.width - 5, band.y + band.height / 2));
    }

    /** What is typed into a cell of a site table, and what of it is selected. */
    @ParameterizedTest
    @ValueSource(strings = {Preferences.LIGHT, Preferences.DARK})
    void whatIsTypedIntoACellIsToldFromItsGround(String theme) throws Exception {
        Preferences.store().setValue(Preferences.THEME, theme);
        Patience.await("the window is as it shall be", () -> ScreenTheme.isDark() == theme.equals(Preferences.DARK));
        page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        ElementsView tables = (ElementsView) page().showView(ElementsView.ID);
        Patience.await("there are rows", () -> tables.table().getItemCount() > 0);
        Event enter = new Event();
        enter.keyCode = SWT.CR;
        enter.character = SWT.CR;
        tables.table().setFocus();
        tables.table().select(0);
        tables.table().notifyListeners(SWT.KeyDown, enter);
        cell(tables.table());
        page().hideView(tables);
        assertEquals(List.of(), faint);
    }

    private void cell(Composite list) {
        Patience.await("a cell is open", () -> Widgets.all(list, Text.class).anyMatch(text -> text.isVisible() && text.getSize().x > 0));
        Patience.pause(300);
        Widgets.all(list, Text.class).filter(Control::isVisible).forEach(text -> {
            text.setSelection(0);
            Patience.pause(200);
            ImageData picture = Contrast.painted(text);
            assertTrue(!text.getText().isEmpty(), "something to read");
            RGB unselected = picture.palette.getRGB(picture.getPixel(picture.width / 2, EDGE_PX));
            note("cell of " + list, text.getText(), Contrast.in(picture, new Rectangle(2, 2, picture.width - 4, picture.height - 4)));
            text.selectAll();
            text.setFocus();
            Patience.pause(200);
            picture = Contrast.painted(text);
            GC gc = new GC(text);
            int wide = gc.textExtent(text.getText()).x;
            gc.dispose();
            Rectangle letters = new Rectangle(EDGE_PX, EDGE_PX, Math.min(wide, picture.width) - 2 * EDGE_PX, picture.height - 2 * EDGE_PX);
            note("selected in a cell of " + list, text.getText(), Contrast.in(picture, letters));
            assertTrue(Contrast.of(picture.palette.getRGB(picture.getPixel(letters.x + letters.width / 2, EDGE_PX)), unselected) > 1.3,
                    "the selection stands out");
        });
    }

    private static Event arrow() {
        Event event = new Event();
        event.keyCode = SWT.ARROW_RIGHT;
        return event;
    }

    private void plan(PlanEditor editor, PlanDriver plan) {
        double before = least;
        for (int tries = 0; tries < MOST_TRIES && (tries == 0 || !faint.isEmpty()); tries++) {
            Patience.pause(500 + tries * 1000);
            faint.clear();
            looked = 0;
            least = before;
            ImageData picture = Contrast.painted(editor.viewer().getControl());
            plan.labels().forEach((label, box) -> look("plan", label.text(), picture, box, Inks.colour(label.ink()).getRGB()));
        }
        assertTrue(looked > 5, "labels of the plan: " + looked);
    }

    private void palette(PaletteViewer viewer) {
        looked = 0;
        ImageData picture = Contrast.painted(viewer.getControl());
        RGB ground = picture.palette.getRGB(picture.getPixel(picture.width - 3, picture.height - 3));
        assertEquals(ScreenTheme.isDark(), Contrast.luminance(ground) < 0.2, "ground of the palette: " + ground);
        texts(((GraphicalEditPart) viewer.getRootEditPart()).getFigure(), picture);
        assertTrue(looked > 5, "entries of the palette: " + looked);
    }

    private void texts(IFigure figure, ImageData picture) {
        if (!figure.isShowing()) {
            return;
        }
        String text = figure instanceof Label label ? label.getText()
                : figure instanceof TextFlow flow ? flow.getText() : "";
        if (!text.isBlank()) {
            org.eclipse.draw2d.geometry.Rectangle box = figure instanceof Label label ? label.getTextBounds().getCopy()
                    : figure.getBounds().getCopy();
            figure.translateToAbsolute(box);
            Rectangle part = new Rectangle(box.x, box.y, box.width, box.height).intersection(new Rectangle(0, 0, picture.width,
                    picture.height));
            if (part.width > LEAST_WIDTH && part.height > LEAST_WIDTH) {
                note("palette", text, Contrast.in(picture, part));
            }
        }
        for (Object child : figure.getChildren()) {
            texts((IFigure) child, picture);
        }
    }

    /** Looks at every canvas in sight that knows what it has written. */
    private void painted(String what, int atLeast) {
        Patience.await(what + " is painted", () -> Widgets.all(shell(), Canvas.class).filter(Control::isVisible)
                .anyMatch(canvas -> Lettering.of(canvas).filter(letters -> !letters.written().isEmpty()).isPresent()));
        Patience.pause(400);
        looked = 0;
        int[] canvases = {0};
        Widgets.all(shell(), Canvas.class).filter(Control::isVisible).filter(canvas -> canvas.getSize().x > LEAST_WIDTH)
                .forEach(canvas -> Lettering.of(canvas).ifPresent(letters -> {
                    canvases[0]++;
                    canvas.redraw();
                    ImageData picture = Contrast.painted(canvas);
                    letters.written().forEach(text -> look(what, text.text(), picture, text.where(), text.ink()));
                }));
        assertTrue(canvases[0] >= atLeast && looked > 1, what + ": " + canvases[0] + " canvases, " + looked + " texts");
    }

    private void look(String what, String text, ImageData picture, Rectangle where, RGB ink) {
        Rectangle part = where.intersection(new Rectangle(0, 0, picture.width, picture.height));
        if (part.width >= Math.min(where.width, LEAST_WIDTH) && part.height == where.height && part.width * 2 > where.width) {
            note(what, text, Contrast.ofText(picture, part, ink));
        }
    }

    private void note(String what, String text, double contrast) {
        looked++;
        least = Math.min(least, contrast);
        if (contrast < Contrast.LEAST) {
            faint.add(String.format(Locale.ROOT, "%s: '%s' %.2f", what, text.strip(), contrast));
        }
    }
}
