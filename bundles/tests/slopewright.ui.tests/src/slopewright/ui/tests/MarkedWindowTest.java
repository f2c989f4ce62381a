package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.messages.MessageRenderer;
import slopewright.model.Identified;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.UnmarkedText;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.elements.OutlineView;
import slopewright.ui.plan.PlanEditor;
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

/**
 * In a window that speaks the marked language every text of every menu, view and dialog stands in marks, or is data of the project. It runs
 * in a process of its own (see the build file), whose language is the marked one from its start.
 */
class MarkedWindowTest {

    private static final List<String> VIEWS = List.of(FindingsView.ID, ElementsView.ID, SectionView.ID, PilotView.ID, DirectionsView.ID,
            ComparisonView.ID, MeasuredView.ID, VersionsView.ID, BookView.ID, ReviewView.ID, PropertiesView.ID, OutlineView.ID);
    private static final int MOST_ROWS = 60;

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private UnmarkedText finder;
    private final Set<String> known = new HashSet<>();
    /** What the platform says before a name. */
    private final Set<String> filled = new HashSet<>();
    private final Set<String> unmarked = new TreeSet<>();
    private int looked;

    @BeforeEach
    void open() throws Exception {
        assertEquals(MessageRenderer.MARKED.getLanguage(), Locale.getDefault().getLanguage(), "the language of the process");
        names();
        assertTrue(ProjectOpener.open(window(), DemoProjects.copy("harrow-vale-faults", folder)));
        document = Adapters.adapt(page().getActiveEditor(), ProjectDocument.class);
        Set<String> more = new HashSet<>(Dialogs.DATA);
        DemoProjects.load(DemoProjects.olderEdition()).eAllContents().forEachRemaining(element -> {
            if (element instanceof Identified identified) {
                more.add(identified.getId());
            }
        });
        finder = UnmarkedText.of(document.project(), more);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    private static IWorkbenchPage page() {
        return window().getActivePage();
    }

    /**
     * What has its words elsewhere than in the catalogues, and in German too: names beside the declarations of a bundle, names that are
     * made of those of the model, and texts of the platform for which the product brings German ones.
     */
    private void names() throws IOException {
        Path root = Path.of(System.getProperty("slopewright.root"));
        try (Stream<Path> own = Files.walk(root.resolve("bundles")); Stream<Path> brought = Files.walk(root.resolve("releng/compat"))) {
            for (Path file : Stream.concat(own, brought)
                    .filter(path -> path.toString().endsWith(".properties") && !path.toString().contains("target")).toList()) {
                if (file.endsWith("plugin.properties")) {
                    read(file).values().forEach(name -> known.add(plain(String.valueOf(name))));
                } else if (file.endsWith("attributes_de.properties")) {
                    read(file).keySet().forEach(key -> known.add(words(String.valueOf(key).replaceFirst(".*\\.", ""))));
                } else if (file.startsWith(root.resolve("releng/compat")) && file.endsWith("messages_de.properties")) {
                    platform(file, root.resolve("releng/compat"));
                }
            }
        }
        // languages and paper by their own names; the toolkit brings its German itself
        known.addAll(List.of("English", "Deutsch", "letter"));
        Stream.of("SWT_Minimize", "SWT_Maximize", "SWT_ShowList").map(SWT::getMessage).forEach(known::add);
    }

    /** The English texts of the platform to which a file has the German ones. */
    private void platform(Path german, Path compat) throws IOException {
        String fragment = compat.relativize(german).getName(0).toString();
        String host = read(compat.resolve(fragment).resolve("META-INF/MANIFEST.MF")).getProperty("Fragment-Host").replaceFirst(";.*", "");
        String name = compat.resolve(fragment).resolve("src").relativize(german).toString().replace("_de", "");
        Properties english = new Properties();
        try (InputStream in = Platform.getBundle(host).getEntry(name).openStream()) {
            english.load(in);
        }
        for (Object key : read(german).keySet()) {
            assertTrue(english.containsKey(key), german + ": " + key);
            String text = plain(english.getProperty(String.valueOf(key))).replace("''", "'");
            known.add(text);
            known.add(text.replace("{0}", "Slopewright"));
            if (text.matches("\\w[^{}]*\\{0}")) {
                filled.add(text.replace("{0}", ""));
            }
        }
    }

    private static Properties read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        }
        return properties;
    }

    /** What a name of the model becomes where no catalogue has another one: {@code GlidePathAid} is a glide path aid. */
    private static String words(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String plain(String text) {
        return text.replaceFirst("\t.*", "").replace("&&", "\u0001").replace("&", "").replace("\u0001", "&").strip();
    }

    private void note(String where, String text) {
        if (text == null || text.isBlank()) {
            return;
        }
        looked++;
        String bare = plain(text);
        // a number or a key behind a name, and the case of its first letter, are not what is looked for
        String bareOfKeys = bare.replaceFirst(" +\\((?:(?:(?:Shift|Ctrl|Alt)\\+)+[^()]{1,8}|[A-Z]{3,8})\\)$", "");
        String name = bareOfKeys.replaceFirst(" \\d+$", "");
        boolean isFilled = filled.stream().anyMatch(begin -> bare.startsWith(begin) && known.contains(bare.substring(begin.length())));
        if (!isFilled && Stream.of(bare, bareOfKeys, name, name.toLowerCase(Locale.ROOT)).noneMatch(known::contains)) {
            finder.in(bareOfKeys).forEach(word -> unmarked.add(word + " in '" + bare + "' (" + where + ")"));
        }
    }

    @Test
    void everyTextOfEveryViewIsMarked() throws Exception {
        look("window", window().getShell());
        for (String id : VIEWS) {
            String title = page().showView(id).getTitle();
            Patience.pause(600);
            look(title, window().getShell());
        }
        Set<Object> kinds = new HashSet<>();
        document.project().eAllContents().forEachRemaining(element -> {
            if (element instanceof Identified identified && kinds.add(element.eClass())) {
                document.viewState().select(List.of(identified));
                Patience.pause(50);
                look("properties of " + element.eClass().getName(), window().getShell());
            }
        });
        assertTrue(looked > 2000, looked + " texts");
        assertEquals(Set.of(), unmarked);
    }

    @Test
    void everyMenuIsMarked() {
        menu("menu", window().getShell().getMenuBar());
        assertTrue(looked > 60, looked + " entries");
        assertEquals(Set.of(), unmarked);
    }

    /** Every dialog, with each page of the wizards and of the preferences. */
    @Test
    void everyDialogIsMarked() throws Exception {
        List<String> opened = Dialogs.walk(folder, this::look);
        assertEquals(Set.of(), unmarked);
        assertTrue(opened.size() >= 18, opened.toString());
    }

    /** The menus of the plan and of the views, and what they say of each thing that can be selected. */
    @Test
    void everyMenuOfAViewIsMarked() throws Exception {
        PlanEditor editor = (PlanEditor) page().getActiveEditor();
        Set<Object> kinds = new HashSet<>();
        document.project().eAllContents().forEachRemaining(element -> {
            if (element instanceof Identified identified && kinds.add(element.eClass())) {
                document.viewState().select(List.of(identified));
                Patience.pause(50);
                menu("plan, " + element.eClass().getName(), editor.viewer().getContextMenu()
                        .createContextMenu(editor.viewer().getControl()));
            }
        });
        for (String id : VIEWS) {
            IViewPart view = page().showView(id);
            Patience.pause(200);
            IMenuManager more = view.getViewSite().getActionBars().getMenuManager();
            items(view.getTitle(), more);
            Widgets.all(window().getShell(), Control.class).filter(control -> control.isVisible() && control.getMenu() != null)
                    .forEach(control -> menu("menu in " + view.getTitle(), control.getMenu()));
        }
        assertTrue(looked > 100, looked + " entries");
        assertEquals(Set.of(), unmarked);
    }

    private void items(String where, IMenuManager menu) {
        for (IContributionItem item : menu.getItems()) {
            if (item instanceof ActionContributionItem entry) {
                note(where, entry.getAction().getText());
            } else if (item instanceof IMenuManager below) {
                items(where, below);
            }
        }
    }

    private void look(String where, Control control) {
        note(where, control.getToolTipText());
        if (control instanceof Shell shell) {
            note(where, shell.getText());
        } else if (control instanceof Label label) {
            note(where, label.getText());
        } else if (control instanceof CLabel label) {
            note(where, label.getText());
        } else if (control instanceof Button button) {
            note(where, button.getText());
        } else if (control instanceof Link link) {
            note(where, link.getText().replaceAll("</?[aA][^>]*>", ""));
        } else if (control instanceof Group group) {
            note(where, group.getText());
        } else if (control instanceof StyledText text) {
            note(where, text.getText());
        } else if (control instanceof Text text && (text.getStyle() & SWT.READ_ONLY) != 0) {
            note(where, text.getText());
        } else if (control instanceof Text text) {
            note(where, text.getMessage());
        } else if (control instanceof Combo combo) {
            Stream.of(combo.getItems()).forEach(item -> note(where, item));
        } else if (control instanceof Table table) {
            Stream.of(table.getColumns()).forEach(column -> item(where, column));
            Stream.of(table.getItems()).limit(MOST_ROWS).forEach(row -> row(where, table, row));
        } else if (control instanceof Tree tree) {
            Stream.of(tree.getColumns()).forEach(column -> item(where, column));
            Stream.of(tree.getItems()).limit(MOST_ROWS).forEach(row -> row(where, tree, row));
        } else if (control instanceof ToolBar bar) {
            Stream.of(bar.getItems()).forEach(tool -> {
                item(where, tool);
                note(where, tool.getToolTipText());
            });
        } else if (control instanceof CTabFolder tabs) {
            Stream.of(tabs.getItems()).forEach(tab -> {
                item(where, tab);
                note(where, tab.getToolTipText());
            });
        }
        if (control instanceof Composite composite) {
            Stream.of(composite.getChildren()).forEach(child -> look(where, child));
        }
    }

    private void item(String where, Item item) {
        note(where, item.getText());
    }

    private void row(String where, Table table, TableItem row) {
        for (int i = 0; i < Math.max(1, table.getColumnCount()); i++) {
            note(where, row.getText(i));
        }
    }

    private void row(String where, Tree tree, TreeItem row) {
        for (int i = 0; i < Math.max(1, tree.getColumnCount()); i++) {
            note(where, row.getText(i));
        }
        if (row.getExpanded()) {
            Stream.of(row.getItems()).limit(MOST_ROWS).forEach(child -> row(where, tree, child));
        }
    }

    private void menu(String where, Menu menu) {
        menu.notifyListeners(SWT.Show, new Event());
        for (MenuItem item : menu.getItems()) {
            note(where, item.getText());
            if (item.getMenu() != null) {
                menu(where + " > " + plain(item.getText()), item.getMenu());
            }
        }
        menu.notifyListeners(SWT.Hide, new Event());
    }
}
