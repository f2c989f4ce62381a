package slopewright.ui.document;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.CheckResult;
import slopewright.edit.EditHistory;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ReplaceContent;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.messages.Reasoned;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;
import slopewright.ui.internal.BackgroundCheck;
import slopewright.ui.internal.KeptWork;
import slopewright.ui.internal.RecoveryFile;
import slopewright.ui.preferences.Preferences;

/**
 * A project that is open in the window: its file, its edits, and what the rules say about it. Every edit goes through
 * {@link #history()}. A copy follows each change, is checked and is kept as a recovery file in the background. Used on the user
 * interface thread.
 */
public final class ProjectDocument {

    /** What the edit is called that brings unsaved work back. */
    public static final String RESTORE = "Restore unsaved work";

    private final Display display;
    private final Project project;
    private final EditHistory history = new EditHistory();
    private final List<DocumentListener> listeners = new CopyOnWriteArrayList<>();
    private final Owner owner = new Owner(this);
    private final BackgroundCheck check;
    private final ViewState viewState;
    private final EvaluationCache evaluated;
    private final IPreferenceStore preferences = Preferences.store();
    private final IPropertyChangeListener units = event -> unitsChanged(event.getProperty());
    private Optional<ProjectEvaluation> evaluation = Optional.empty();
    private Path path;
    private KeptWork kept;
    private boolean isNew;
    private int restored;
    private Optional<CheckResult> lastResult = Optional.empty();
    private Optional<String> checkProblem = Optional.empty();

    /** Lets the document of a project be found from any of its elements. */
    private static final class Owner extends AdapterImpl {

        private final ProjectDocument document;

        Owner(ProjectDocument document) {
            this.document = document;
        }
    }

    private ProjectDocument(Project project, Path path, boolean isNew) {
        this.display = Display.getCurrent() == null ? Display.getDefault() : Display.getCurrent();
        this.project = project;
        this.path = path;
        this.isNew = isNew;
        this.kept = new KeptWork(path, project);
        this.viewState = new ViewState(project);
        project.eAdapters().add(owner);
        restore();
        check = new BackgroundCheck(display, project, new BackgroundCheck.Listeners(this::accept, this::problem,
                () -> tell(DocumentListener::stateChanged)));
        evaluated = check.cacheForWindow();
        history.addListener(new Edits());
        preferences.addPropertyChangeListener(units);
    }

    /** Everything that is shown is written anew in the units that were chosen. */
    private void unitsChanged(String preference) {
        if (preference.equals(Preferences.LENGTH_UNIT) || preference.equals(Preferences.ANGLE_FORM)) {
            onDisplay(() -> {
                tell(listener -> listener.changed(Set.of()));
                lastResult.ifPresent(result -> tell(listener -> listener.checked(result)));
            });
        }
    }

    /** Passes edits on to the checker and to the listeners. */
    private final class Edits implements EditHistory.Listener {

        @Override
        public void touched(List<Identified> elements) {
            check.touched(elements);
        }

        @Override
        public void changed(Set<String> elementIds) {
            renew(elementIds);
            edited(elementIds);
        }
    }

    /**
     * Opens a project. Where there is no file yet, the document begins with an empty project that is dirty until the first save. Unsaved
     * work of a run that ended unexpectedly is restored as an edit, which can be undone.
     *
     * @param path the project file
     * @return the document; whoever opens it disposes it
     * @throws ProjectFileException where the file cannot be read; the message names file, line and reason
     */
    public static ProjectDocument open(Path path) throws ProjectFileException {
        return open(new ProjectInput(path));
    }

    /**
     * Opens the project of an input, as it was read with that or, where it was not, as its file says.
     *
     * @param input names the file
     * @return the document; whoever opens it disposes it
     * @throws ProjectFileException as above
     */
    public static ProjectDocument open(ProjectInput input) throws ProjectFileException {
        Path file = input.path();
        Optional<Project> read = input.take();
        boolean isNew = read.isEmpty() && !Files.exists(file);
        Project project = read.isPresent() ? read.get() : isNew ? blank(file) : ProjectFile.load(file);
        ProjectDocument document = new ProjectDocument(project, file, isNew);
        document.check.requestWhenPainted(document::dirtyRecovery);
        return document;
    }

    private static Project blank(Path file) {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        String name = String.valueOf(file.getFileName());
        int stem = name.length() - ProjectInput.FILE_SUFFIX.length();
        project.setName(name.endsWith(ProjectInput.FILE_SUFFIX) ? name.substring(0, stem) : name);
        Preferences.begin(project);
        project.setAerodrome(SlopewrightFactory.eINSTANCE.createAerodrome());
        Ids.assign(project);
        return project;
    }

    private void restore() {
        for (Project work : kept.take(path, project)) {
            history.perform(ReplaceContent.of(RESTORE, project, work));
            restored++;
        }
    }

    /**
     * Returns the document that an element belongs to.
     *
     * @param element an element of a project
     * @return its document, empty where its project is not open
     */
    public static Optional<ProjectDocument> of(EObject element) {
        return Projects.project(element).flatMap(project -> project.eAdapters().stream().filter(Owner.class::isInstance)
                .map(adapter -> ((Owner) adapter).document).findFirst());
    }

    /** Returns the project, the same object as long as the document is open; changed through the history only. */
    public Project project() {
        return project;
    }

    /** Returns the file of the project; it need not exist yet. */
    public Optional<Path> path() {
        return Optional.ofNullable(path);
    }

    /** Returns what the views of the document look at together. */
    public ViewState viewState() {
        return viewState;
    }

    /** Returns the edits of the project. */
    public EditHistory history() {
        return history;
    }

    /**
     * Returns the rule set of the project, with its overrides and confirmations.
     *
     * @throws IllegalArgumentException where the project names an unknown one; the message says which are known
     */
    public RuleSet rules() {
        return ProjectRules.of(project, Optional.empty());
    }

    /**
     * Returns what follows from the project as it stands: every aid under its own rule set, against everything that stands there. The same
     * object until the next edit, or until survey points are there that a check has read in the background; until then their blocks are
     * among what was not compared. Every place of the window that shows a figure of an aid reads it here.
     *
     * @throws IllegalArgumentException where the project names an unknown rule set, or an override does not fit it; the message says which
     */
    public ProjectEvaluation evaluation() {
        if (evaluation.isEmpty()) {
            evaluation = Optional.of(ProjectEvaluation.of(project, Optional.empty(), evaluated));
        }
        return evaluation.get();
    }

    /** Returns what an aid of the project gives as it stands, or why nothing can be evaluated. */
    public Attempt<AidEvaluation> evaluation(ApproachAid aid) {
        try {
            return Attempt.success(evaluation().aid(aid));
        } catch (IllegalArgumentException e) {
            return Attempt.failure(Reasoned.of(e));
        }
    }

    /**
     * Returns a copy of the project as it stands, evaluated, for one job in the background. What is read of survey points serves all.
     *
     * @throws IllegalArgumentException as above
     */
    public ProjectEvaluation snapshot() {
        return evaluate(ProjectFile.copy(project));
    }

    /**
     * Evaluates a copy of the project, or another version of it.
     *
     * @throws IllegalArgumentException as above
     */
    public ProjectEvaluation evaluate(Project copy) {
        return ProjectEvaluation.of(copy, Optional.empty(), check.cacheForCopy());
    }

    private void renew(Set<String> changed) {
        evaluated.forget(project, changed);
        evaluation = Optional.empty();
    }

    /** Returns whether the project differs from its file. */
    public boolean isDirty() {
        return isNew || history.isDirty();
    }

    /** Returns how many unsaved works of earlier runs were restored, one a window, and not saved since; each is an edit. */
    public int restoredWorks() {
        return restored;
    }

    /**
     * Saves the project into its file.
     *
     * @throws ProjectFileException where it cannot be written; then nothing has changed
     */
    public void save() throws ProjectFileException {
        saveAs(path);
    }

    /**
     * Saves the project into a file, which is its file from then on.
     *
     * @param file the file
     * @throws ProjectFileException where it cannot be written; then nothing has changed. Its cause is a
     *                              {@link slopewright.model.io.FileChangedException} where another program changed the file meanwhile
     */
    public void saveAs(Path file) throws ProjectFileException {
        Path target = file.toAbsolutePath().normalize();
        ProjectFile.save(project, target);
        saved(target);
    }

    /**
     * Saves the project into its file, though another program has changed that file meanwhile; what that one wrote is kept beside it.
     *
     * @param file the file, which is that of the project from then on
     * @throws ProjectFileException where it cannot be written; then nothing has changed
     */
    public void saveOver(Path file) throws ProjectFileException {
        Path target = file.toAbsolutePath().normalize();
        ProjectFile.saveOver(project, target);
        saved(target);
    }

    /**
     * Takes over what another program wrote into the file of the project, as an edit that can be undone.
     *
     * @param label what the edit is called
     * @throws ProjectFileException where the file cannot be read; then nothing has changed
     */
    public void takeOver(String label) throws ProjectFileException {
        Project other = ProjectFile.load(path);
        ProjectFile.goOnFrom(project, other);
        history.perform(ReplaceContent.of(label, project, other));
        saved(path);
    }

    private void saved(Path target) {
        kept.discard();
        if (!target.equals(path)) {
            path = target;
            kept.release();
            kept = new KeptWork(target, project);
            kept.discard();
            check.moved(target);
        }
        kept.own().goesOnFrom(ProjectFile.seen(project));
        isNew = false;
        restored = 0;
        history.markSaved();
    }

    /**
     * Checks in the background what an edit would lead to before it is made: every rule, as the check after it says.
     *
     * @param edit   makes the edit for a copy of the project, in which elements have the ids that they have here
     * @param answer makes of the result, in the background, what is run with it here; not run where a newer edit was tried out before this
     *               one began, or {@link #endTrials()} was called
     */
    public void tryOut(Function<Project, RecordedEdit> edit, Function<CheckResult, Runnable> answer) {
        check.tryOut(edit, answer);
    }

    /** Ends what {@link #tryOut} began. */
    public void endTrials() {
        check.endTrials();
    }

    /**
     * Returns the last result that saw the project as it is now or was shortly before, empty before the first check and where the project
     * cannot be checked.
     */
    public Optional<CheckResult> lastResult() {
        return lastResult;
    }

    /** Returns the result that saw the project as it is now; empty while a check is on its way, was ended, or cannot be made. */
    public Optional<CheckResult> currentResult() {
        return lastResult.filter(result -> !isChecking() && !isCheckStopped());
    }

    /** Returns why the project cannot be checked, such as an unknown rule set; empty where it can. */
    public Optional<String> checkProblem() {
        return checkProblem;
    }

    /** Returns whether the last result is older than the project and a new one is on its way. */
    public boolean isChecking() {
        return check.isPending();
    }

    /** Returns how far the running check has come, in per cent. */
    public int checkPercent() {
        return check.percent();
    }

    /** Ends the running check: the last result stays, and the next edit asks for a new one. */
    public void stopChecking() {
        check.stop();
    }

    /** Returns whether the last check was ended before it was done, so that the last result is older than the project. */
    public boolean isCheckStopped() {
        return check.isStopped();
    }

    /** Adds a listener, which is told on the user interface thread. */
    public void addListener(DocumentListener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(DocumentListener listener) {
        listeners.remove(listener);
    }

    /** Ends the document: no listener hears from it any more; unsaved work is given up. */
    public void dispose() {
        check.dispose();
        kept.discard();
        kept.release();
        preferences.removePropertyChangeListener(units);
        listeners.clear();
        project.eAdapters().remove(owner);
    }

    private Optional<RecoveryFile> dirtyRecovery() {
        return isDirty() && Preferences.keepsRecovery() ? Optional.of(kept.own()) : Optional.empty();
    }

    private void edited(Set<String> ids) {
        onDisplay(() -> {
            if (!isDirty()) {
                kept.discard();
            }
            if (!ids.isEmpty()) {
                check.requestSoon(this::dirtyRecovery);
                tell(listener -> listener.changed(ids));
            }
            tell(DocumentListener::stateChanged);
        });
    }

    private void accept(CheckResult result) {
        lastResult = Optional.of(result);
        checkProblem = Optional.empty();
        if (evaluated.takeWaiting()) {
            evaluation = Optional.empty();
            tell(DocumentListener::pointsRead);
        }
        tell(listener -> listener.checked(result));
        tell(DocumentListener::stateChanged);
    }

    /** What was said before was said of another project than one that cannot be checked. */
    private void problem(String reason) {
        checkProblem = Optional.of(reason);
        lastResult = Optional.empty();
        tell(DocumentListener::unchecked);
        tell(DocumentListener::stateChanged);
    }

    private void tell(Consumer<DocumentListener> what) {
        listeners.forEach(what);
    }

    private void onDisplay(Runnable work) {
        if (Display.getCurrent() == display) {
            work.run();
        } else if (!display.isDisposed()) {
            display.asyncExec(work);
        }
    }
}
