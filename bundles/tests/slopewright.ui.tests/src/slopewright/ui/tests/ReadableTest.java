package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.elements.OutlineView;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.DirectionsView;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;
import slopewright.ui.review.ReviewView;
import slopewright.ui.review.VersionsView;
import slopewright.ui.theme.ScreenTheme;

/** Every text of every view, as it is painted, is told from its ground in the light and in the dark. */
class ReadableTest {
    private static final List<String> VIEWS = List.of(FindingsView.ID, ElementsView.ID, SectionView.ID, PilotView.ID, DirectionsView.ID,
            ComparisonView.ID, MeasuredView.ID, VersionsView.ID, BookView.ID, ReviewView.ID, PropertiesView.ID,
            OutlineView.ID);
    private static final int LEAST_WIDTH = 8;
    private static final int EDGE_PX = 5;
    /** What is switched off has at most this share of the contrast of what is not. */
    private static final double MOST_OF_USUAL = 0.7;
    /** A busy machine paints late; what is faint stays so. */
    private static final int MOST_TRIES = 6;

    @TempDir
    private Path folder;
    private int looked;
    private int disabled;
    private double least = Double.MAX_VALUE;

    @AfterEach
    void goBackToLight() {
        Preferences.store().setValue(Preferences.THEME, Preferences.LIGHT);
        Patience.await("the window is light", () -> !ScreenTheme.isDark());
        page().closeAllEditors(false);
        VIEWS.stream().filter(id -> !id.equals(FindingsView.ID) && !id.equals(PropertiesView.ID))
                .forEach(id -> page().hideView(page().findView(id)));
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void open(String theme) {
        Preferences.store().setValue(Preferences.THEME, theme);
        Patience.await("the window is as it shall be", () -> ScreenTheme.isDark() == theme.equals(Preferences.DARK));
        assertTrue(ProjectOpener.open(PlatformUI.getWorkbench().getWorkbenchWindows()[0], DemoProjects.copy("harrow-vale-faults",
                folder)));
        ProjectDocument document = Adapters.adapt(page().getActiveEditor(), ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @ParameterizedTest
    @ValueSource(strings = {Preferences.LIGHT, Preferences.DARK})
    void everyTextIsToldFromItsGround(String theme, TestReporter report) throws Exception {
        open(theme);
        List<String> faint = new ArrayList<>();
        for (String id : VIEWS) {
            IViewPart view = page().showView(id);
            double before = least;
            List<String> here = new ArrayList<>();
            for (int tries = 0; tries < MOST_TRIES && (tries == 0 || !here.isEmpty()); tries++) {
                Patience.pause(500 + tries * 1500);
                here.clear();
                looked = 0;
                least = before;
                look(view.getTitle(), PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), here);
            }
            faint.addAll(here);
            assertTrue(looked > 0, view.getTitle() + ": nothing to look at");
        }
        assertEquals(List.of(), faint);
        Contrast.record(report, "views", theme, least);
    }

    /** Every dialog, with each page of the wizards and of the preferences; what is switched off there looks so, and is still read. */
    @ParameterizedTest
    @ValueSource(strings = {Preferences.LIGHT, Preferences.DARK})
    void everyDialogIsReadAndShowsWhatIsSwitchedOff(String theme, TestReporter report) throws Exception {
        open(theme);
        List<String> faint = new ArrayList<>();
        List<String> off = new ArrayList<>();
        List<String> opened = Dialogs.walk(folder, (name, shell) -> {
            repeated(faint, here -> look(name, shell, here));
            repeated(off, here -> switchedOff(name, shell, here));
        });
        assertTrue(opened.size() >= 18, opened.toString());
        assertTrue(disabled > 4, disabled + " buttons that are switched off");
        assertEquals(List.of(), faint);
        assertEquals(List.of(), off);
        Contrast.record(report, "dialogs", theme, least);
    }

    /** Looks again where something was faint, and keeps what stays so. */
    private void repeated(List<String> faint, Consumer<List<String>> look) {
        List<String> here = new ArrayList<>();
        double before = least;
        look.accept(here);
        for (int tries = 1; tries < MOST_TRIES && !here.isEmpty(); tries++) {
            Patience.pause(tries * 500);
            here.clear();
            least = before;
            look.accept(here);
        }
        faint.addAll(here);
    }

    /** A button that is switched off stands out clearly less than another of its dialog. */
    private void switchedOff(String name, Shell shell, List<String> off) {
        List<Button> buttons = Widgets.all(shell, Button.class).filter(button -> button.isVisible() && !button.getText().isBlank()
                && (button.getStyle() & SWT.PUSH) != 0 && button != shell.getDefaultButton()).toList();
        OptionalDouble usual = buttons.stream().filter(Control::isEnabled).mapToDouble(ReadableTest::contrast).max();
        buttons.stream().filter(button -> !button.isEnabled() && usual.isPresent()).forEach(button -> {
            disabled++;
            double faint = contrast(button);
            if (faint > MOST_OF_USUAL * usual.getAsDouble() || faint < Contrast.LEAST_OF_LINES) {
                off.add(String.format(Locale.ROOT, "%s: '%s' %.2f, others %.2f", name, button.getText(), faint, usual.getAsDouble()));
            }
        });
    }

    /** The contrast of the words of a button, its edge left out. */
    private static double contrast(Button button) {
        Point size = button.getSize();
        return Contrast.in(Contrast.painted(button), new Rectangle(EDGE_PX, EDGE_PX, size.x - 2 * EDGE_PX, size.y - 2 * EDGE_PX));
    }

    private void look(String view, Control control, List<String> faint) {
        if (!control.isVisible() || control.getSize().x < LEAST_WIDTH || !isInSight(control)) {
            return;
        }
        if (control instanceof CTabFolder tabs) {
            ImageData picture = Contrast.painted(tabs);
            Rectangle sight = new Rectangle(0, 0, tabs.getSize().x, tabs.getSize().y);
            Stream.of(tabs.getItems()).filter(CTabItem::isShowing)
                    .forEach(tab -> look(view, tab.getText(), picture, tab.getBounds(), sight, faint));
        } else if (control instanceof Tree tree) {
            ImageData picture = Contrast.painted(tree);
            Rectangle sight = sight(tree);
            Stream.of(tree.getItems()).forEach(item -> look(view, tree, item, picture, sight, faint));
        } else if (control instanceof Table table) {
            ImageData picture = Contrast.painted(table);
            for (TableItem item : table.getItems()) {
                for (int i = 0; i < Math.max(1, table.getColumnCount()); i++) {
                    look(view, item.getText(i), picture, item.getBounds(i), sight(table), faint);
                }
            }
        } else if (!text(control).isBlank() && control.isEnabled()) {
            Rectangle area = new Rectangle(0, 0, control.getSize().x, control.getSize().y);
            look(view, text(control), Contrast.painted(control), area, area, faint);
        }
        if (control instanceof Composite composite) {
            Stream.of(composite.getChildren()).forEach(child -> look(view, child, faint));
        }
    }

    private void look(String view, Tree tree, TreeItem item, ImageData picture, Rectangle sight, List<String> faint) {
        for (int i = 0; i < Math.max(1, tree.getColumnCount()); i++) {
            look(view, item.getText(i), picture, item.getBounds(i), sight, faint);
        }
        if (item.getExpanded()) {
            Stream.of(item.getItems()).forEach(child -> look(view, tree, child, picture, sight, faint));
        }
    }

    /** Whether nothing that scrolls cuts the control off. */
    private static boolean isInSight(Control control) {
        Rectangle own = new Rectangle(0, 0, control.getSize().x, control.getSize().y);
        for (Composite above = control.getParent(); above != null; above = above.getParent()) {
            Rectangle seen = above.getDisplay().map(control, above, own).intersection(above.getClientArea());
            if (control instanceof Composite ? seen.isEmpty() : seen.width < own.width || seen.height < own.height) {
                return false;
            }
        }
        return true;
    }

    /** The part of a list that nothing above it cuts off; rows beyond it are not painted. */
    private static Rectangle sight(Composite list) {
        Rectangle seen = list.getClientArea();
        for (Composite above = list.getParent(); above != null; above = above.getParent()) {
            seen = seen.intersection(list.getDisplay().map(above, list, above.getClientArea()));
        }
        return seen;
    }

    /** A text of which enough is in sight. */
    private void look(String view, String text, ImageData picture, Rectangle where, Rectangle sight, List<String> faint) {
        Rectangle part = where.intersection(sight);
        if (text.isBlank() || part.width < LEAST_WIDTH || part.height < where.height || part.height == 0) {
            return;
        }
        double contrast = Contrast.in(picture, part);
        boolean beginsOutOfSight = part.x > where.x;
        boolean nothing = part.width < where.width && contrast < Contrast.FAINTEST;
        if (contrast < Contrast.LEAST && (beginsOutOfSight || nothing)) {
            return; // where a list is scrolled the words lie out of sight, and only the line between two cells is left
        }
        looked++;
        least = Math.min(least, contrast);
        if (contrast < Contrast.LEAST) {
            keep(picture, view, part);
            faint.add(String.format(Locale.ROOT, "%s: '%s' %.2f", view, text.strip(), contrast));
        }
    }

    /** Keeps what was looked at under target, so that whoever reads the failure sees it. */
    private static void keep(ImageData picture, String view, Rectangle part) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {picture};
        loader.save(Path.of("target", "faint-" + view.replaceAll("\\W", "-") + "-" + part.x + "-" + part.y + ".png").toAbsolutePath()
                .toString(), SWT.IMAGE_PNG);
    }

    private static String text(Control control) {
        return control instanceof Label label && (label.getStyle() & SWT.SEPARATOR) == 0 ? label.getText()
                : control instanceof CLabel label ? label.getText() == null ? "" : label.getText()
                : control instanceof Button button ? button.getText()
                : control instanceof Text field ? field.getText().isEmpty() ? field.getMessage() : field.getText()
                : control instanceof Combo combo ? combo.getText()
                : control instanceof Link link ? link.getText()
                : control instanceof StyledText styled ? styled.getText() : "";
    }
}
