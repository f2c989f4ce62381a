package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.ui.preferences.Preferences;
import slopewright.ui.theme.ScreenTheme;

/** A selected row keeps all that it shows: its words, its sign, the arrow that opens it and the box that is ticked. */
class SelectedRowTest {

    private static final int SIGN_PX = 16;
    private Shell shell;

    @AfterEach
    void close() {
        shell.dispose();
        Preferences.store().setValue(Preferences.THEME, Preferences.LIGHT);
        Patience.await("the window is light", () -> !ScreenTheme.isDark());
    }

    private void begin(String theme) {
        Preferences.store().setValue(Preferences.THEME, theme);
        Patience.await("the window is as it shall be", () -> ScreenTheme.isDark() == theme.equals(Preferences.DARK));
        shell = new Shell(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), SWT.DIALOG_TRIM);
        shell.setLayout(new FillLayout());
        shell.setSize(420, 200);
    }

    @ParameterizedTest
    @CsvSource({"light, false", "dark, false", "light, true", "dark, true"})
    void ofATree(String theme, boolean ticked) {
        begin(theme);
        Tree tree = new Tree(shell, SWT.BORDER | (ticked ? SWT.CHECK : SWT.NONE));
        TreeItem parent = new TreeItem(tree, SWT.NONE);
        parent.setText("Whole project");
        new TreeItem(parent, SWT.NONE).setText("Part");
        shell.open();
        Patience.pause(700);
        Rectangle arrow = new Rectangle(2, parent.getBounds().y + 2, Math.max(8, parent.getBounds().x - (ticked ? 24 : 4)),
                parent.getBounds().height - 4);
        tree.deselectAll();
        Patience.pause(500);
        double before = Contrast.in(Contrast.painted(tree), arrow);
        tree.setSelection(parent);
        Patience.pause(500);
        ImageData picture = Contrast.painted(tree);
        assertTrue(before > Contrast.LEAST_OF_LINES, "the arrow stands at " + arrow + ": " + before);
        assertTrue(Contrast.in(picture, arrow) > Contrast.LEAST_OF_LINES, "the arrow of a selected row: " + Contrast.in(picture, arrow));
        assertTrue(Contrast.in(picture, parent.getTextBounds(0)) >= Contrast.LEAST,
                "its words: " + Contrast.in(picture, parent.getTextBounds(0)));
        int right = tree.getClientArea().width - 4;
        assertEquals(picture.getPixel(4, arrow.y), picture.getPixel(right, arrow.y), "the row has one ground from left to right");
    }

    @ParameterizedTest
    @CsvSource({"light", "dark"})
    void ofATable(String theme) {
        begin(theme);
        Image sign = new Image(Display.getCurrent(), SIGN_PX, SIGN_PX);
        GC gc = new GC(sign);
        gc.setBackground(Display.getCurrent().getSystemColor(SWT.COLOR_DARK_RED));
        gc.fillRectangle(sign.getBounds());
        gc.dispose();
        Table table = new Table(shell, SWT.BORDER | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        for (String title : new String[] {"Unit", "Verdict"}) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(title);
            column.setWidth(150);
        }
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(new String[] {"A", "not measured"});
        item.setImage(1, sign);
        shell.open();
        table.setSelection(item);
        Patience.pause(700);
        ImageData picture = Contrast.painted(table);
        Rectangle place = item.getImageBounds(1);
        int middle = picture.getPixel(place.x + place.width / 2, place.y + place.height / 2);
        assertEquals(Display.getCurrent().getSystemColor(SWT.COLOR_DARK_RED).getRGB(), picture.palette.getRGB(middle), "the sign is there");
        assertTrue(Contrast.in(picture, item.getTextBounds(1)) >= Contrast.LEAST, "and the words");
        sign.dispose();
    }
}
