package slopewright.ui.tests;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

import slopewright.evaluation.Reviews;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.rcp.internal.ShellCommands;
import slopewright.standards.ValueBook;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.properties.ElementPropertyPage;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.ReviewView;

/** Opens the dialogs of the product in turn, with each page of a wizard and of the preferences, has each looked at, and closes it. */
final class Dialogs {
    private static final List<String> COMMANDS = List.of("org.eclipse.ui.window.preferences", "org.eclipse.ui.help.aboutAction",
            "slopewright.rcp.newSite", "slopewright.ui.review.handover", "slopewright.ui.review.comment", "slopewright.ui.plan.addObstacle",
            "slopewright.ui.readBack");
    private static final String COMMENT = "Why here?";
    private static final String PERSON = "B. Bole";
    private static final String DOCUMENT = "our copy";
    private static final String COLUMNS = "id,latitude,longitude,elevation";
    private static final String OBSTACLES = COLUMNS + "\nQ1,47.3011,-11.9218,102.5\n";
    /** What the dialogs are given to show; it is nobody's text but that of a user. */
    static final Set<String> DATA = Set.of(COMMENT, PERSON, DOCUMENT, "9th", COLUMNS, "id", "latitude", "longitude", "elevation",
            "windows-1252", "UTF-8", "ISO-8859-1");
    private static final int WAIT_MS = 700;

    /** Looks at a dialog. */
    interface Look {
        void at(String name, Shell shell);
    }

    private interface Opening {
        void run() throws Exception;
    }

    private final Look look;
    private final List<String> opened = new ArrayList<>();
    private boolean isLeft;

    private Dialogs(Look look) {
        this.look = look;
    }

    /**
     * Opens all of them.
     *
     * @param folder where files may be written
     * @param look   looks at each
     * @return the names of those that were opened
     */
    static List<String> walk(Path folder, Look look) throws Exception {
        Dialogs dialogs = new Dialogs(look);
        for (String command : COMMANDS) {
            dialogs.open(command, () -> run(command));
        }
        dialogs.open("template", () -> ShellCommands.saveAsTemplate(window()));
        dialogs.open("reset", () -> ShellCommands.resetLayout(window()));
        dialogs.open("a file that cannot be opened", () -> ProjectOpener.open(window(), Files.writeString(folder.resolve(
                "none.slopewright"), "<none/>")));
        dialogs.survey(folder);
        dialogs.edition(folder);
        dialogs.views(folder);
        return dialogs.opened;
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    private static IWorkbenchPage page() {
        return window().getActivePage();
    }

    private static ProjectDocument document() {
        return Adapters.adapt(page().getActiveEditor(), ProjectDocument.class);
    }

    private static void run(String command) throws CommandException {
        page().activate(page().getActiveEditor());
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
    }

    private void survey(Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("obstacles.csv"), OBSTACLES);
        open("import", () -> ((PlanEditor) page().getActiveEditor()).importSurvey(file));
    }

    private void edition(Path folder) throws Exception {
        ProjectDocument document = ProjectDocument.open(Files.copy(DemoProjects.olderEdition(), folder.resolve("older.slopewright")));
        Shell shell = new Shell(Display.getCurrent());
        shell.setLayout(new FillLayout());
        ElementPropertyPage sheet = new ElementPropertyPage(document);
        try {
            sheet.createControl(shell);
            shell.open();
            sheet.selectionChanged(null, new StructuredSelection(document.project()));
            IAction offer = sheet.actions().stream().filter(action -> action.getText().contains("newer edition")).findFirst()
                    .orElseThrow();
            open("edition", offer::run);
        } finally {
            sheet.dispose();
            shell.dispose();
            document.dispose();
        }
    }

    /** Those that a button of a view opens. */
    private void views(Path folder) throws Exception {
        page().showView(ComparisonView.ID);
        open("weights", () -> press("Weigh"));
        ReviewView review = (ReviewView) page().showView(ReviewView.ID);
        open("sign", () -> press("Sign off"));
        review.comment(Optional.empty(), Optional.empty(), new Reviews.Said(COMMENT, PERSON, LocalDate.of(2026, 6, 2)));
        review.select(document().project().getReviewNotes().get(0).getId());
        for (String reply : List.of("Answer", "Return", "Accept")) {
            open(reply, () -> press(reply));
        }
        BookView book = (BookView) page().showView(BookView.ID);
        Patience.await("values are shown", () -> !book.rows().isEmpty());
        book.beginBook(folder.resolve("book.csv"));
        book.select(book.rows().subList(0, 1));
        open("value", () -> press("Hold against"));
        book.write(List.of(book.rows().get(0).entry().decided(ValueBook.Decision.CONFIRMED, Optional.empty(), "",
                new ValueBook.Compared(DOCUMENT, "9th", "6.2", PERSON, "2026-05-01"))));
        book.showAll(true);
        book.select(book.rows().stream().filter(row -> row.entry().lacksToDecide().isEmpty()).limit(1).toList());
        open("value, second person", () -> press("Sign off"));
    }

    /** Presses the button of a view that has a word on it, in English or in marks. */
    private static void press(String word) {
        Button button = Widgets.all(window().getShell(), Button.class).filter(found -> found.isVisible() && found.isEnabled()
                && found.getText().replace("&", "").contains(word)).findFirst().orElseThrow(() -> new AssertionError(word));
        button.notifyListeners(SWT.Selection, new Event());
    }

    private void open(String name, Opening opening) throws Exception {
        Set<Shell> before = Set.of(Display.getCurrent().getShells());
        isLeft = false;
        Display.getCurrent().timerExec(WAIT_MS, () -> leave(name, before));
        opening.run();
        Patience.await(name + " is closed", () -> isLeft);
    }

    private void leave(String name, Set<Shell> before) {
        List<Shell> shells = Stream.of(Display.getCurrent().getShells()).filter(shell -> !before.contains(shell) && shell.isVisible())
                .toList();
        try {
            shells.forEach(shell -> pages(name, shell));
        } finally {
            for (int i = shells.size() - 1; i >= 0; i--) {
                shells.get(i).close();
            }
            isLeft = true;
        }
    }

    private void pages(String name, Shell shell) {
        opened.add(name);
        if (shell.getData() instanceof WizardDialog wizard) {
            for (IWizardPage wizardPage : wizard.getCurrentPage().getWizard().getPages()) {
                wizard.showPage(wizardPage);
                Patience.pause(WAIT_MS / 2);
                look.at(name + ", " + wizardPage.getName(), shell);
            }
            runways(name, wizard);
        } else if (shell.getData() instanceof PreferenceDialog preferences) {
            preferences.getTreeViewer().expandAll();
            for (TreeItem item : preferences.getTreeViewer().getTree().getItems()) {
                preferences.getTreeViewer().setSelection(new StructuredSelection(item.getData()));
                Patience.pause(WAIT_MS / 2);
                look.at(name + ", " + item.getText(), shell);
            }
        } else {
            Patience.pause(WAIT_MS / 2);
            look.at(name, shell);
        }
    }

    /** The dialog in the wizard of a new site that asks for a runway of open data. */
    private void runways(String name, WizardDialog wizard) {
        IWizardPage first = wizard.getCurrentPage().getWizard().getPages()[0];
        wizard.showPage(first);
        Widgets.all(wizard.getShell(), Combo.class).filter(combo -> "site.start".equals(combo.getData("question"))).findFirst()
                .ifPresent(start -> {
                    Set<Shell> before = Set.of(Display.getCurrent().getShells());
                    Display.getCurrent().timerExec(WAIT_MS, () -> leave(name + ", runways", before));
                    start.select(start.getItemCount() - 1);
                    start.notifyListeners(SWT.Selection, new Event());
                });
    }
}
