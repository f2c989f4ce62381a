package slopewright.ui.plan;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablePart;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;

import slopewright.checks.CheckResult;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.DiagramViewer;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.commands.HistoryCommandStack;
import slopewright.ui.diagram.parts.DiagramRootPart;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.diagram.tools.ViewNavigation;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ElementRevealer;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.internal.FileBar;
import slopewright.ui.plan.internal.FindingMarkers;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PilotEye;
import slopewright.ui.plan.internal.PlanActions;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanFiles;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.PlanMenu;
import slopewright.ui.plan.internal.PlanNavigator;
import slopewright.ui.plan.internal.PlanOverlays;
import slopewright.ui.plan.internal.actions.PlanClipboard;
import slopewright.ui.plan.internal.actions.PlanCommands;
import slopewright.ui.plan.internal.actions.SharedSelection;
import slopewright.ui.plan.internal.figures.SurveyLayer;
import slopewright.ui.plan.internal.figures.TerrainLayer;
import slopewright.ui.plan.internal.image.ImageBar;
import slopewright.ui.plan.internal.image.ImageLayer;
import slopewright.ui.plan.internal.image.ImageScaling;
import slopewright.ui.plan.internal.outline.PlanOutline;
import slopewright.ui.plan.internal.palette.PaletteColumn;
import slopewright.ui.plan.internal.palette.PaletteDrop;
import slopewright.ui.plan.internal.palette.PlanPalette;
import slopewright.ui.plan.internal.parts.PlanPartFactory;
import slopewright.ui.plan.internal.survey.SurveyImports;
import slopewright.ui.plan.internal.survey.SurveyPicking;
import slopewright.ui.plan.internal.tools.PlaceRound;
import slopewright.ui.plan.internal.tools.PlanKeys;
import slopewright.ui.properties.ElementPropertyPage;

/**
 * The plan of an aerodrome: looks at a project from above, and places, moves and removes what stands there. Undo, redo and dirty are what
 * the document of the project says.
 */
public final class PlanEditor extends GraphicalEditor implements ElementRevealer, ISaveablePart2 {

    /** The id under which the editor is registered. */
    public static final String ID = "slopewright.ui.plan.editor";

    private ProjectDocument document;
    private PlanFiles files;
    private PlanPalette palette;
    private PlanContext context;
    private PlanNavigator navigator;
    private SharedSelection selection;
    private PlanOverlays overlays;
    private FindingMarkers markers;
    private PilotEye eye;
    private TerrainLayer terrain;
    private SurveyLayer survey;
    private SurveyPicking picking;
    private PlanCommands commands;
    private SurveyImports surveys;
    private PlanClipboard clipboard;
    private PlanMenu menu;
    private FileBar fileBar;
    private ImageBar bar;
    private ImageLayer images;
    private ImageScaling scaling;
    private final Runnable viewListener = this::viewStateChanged;
    private final DocumentListener listener = new DocumentListener() {

        @Override
        public void changed(Set<String> elementIds) {
            refreshPlan(elementIds);
        }

        @Override
        public void checked(CheckResult result) {
            if (survey.isOutdated()) {
                redraw();
            }
            markers.show(result);
        }

        @Override
        public void unchecked() {
            markers.clear();
        }

        @Override
        public void stateChanged() {
            firePropertyChange(ISaveablePart.PROP_DIRTY);
        }
    };

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof ProjectInput project)) {
            throw new PartInitException(Messages.get("open.no-project", input.getName()));
        }
        try {
            document = ProjectDocument.open(project);
        } catch (ProjectFileException e) {
            throw new PartInitException(MessageTexts.reason(e), e);
        }
        files = new PlanFiles(document, () -> getSite().getShell());
        DefaultEditDomain domain = new DefaultEditDomain(this);
        domain.setCommandStack(new HistoryCommandStack(document.history(), this::notice));
        setEditDomain(domain);
        palette = new PlanPalette(document, () -> context);
        domain.setPaletteRoot(palette.root());
        super.init(site, input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        area.setLayout(layout);
        fileBar = new FileBar(area, document);
        bar = new ImageBar(area);
        PaletteColumn column = new PaletteColumn(area);
        column.area().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        super.createPartControl(column.area());
        getGraphicalViewer().getControl().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        column.fill(getEditDomain(), () -> getGraphicalViewer().getControl());
    }

    private void notice(String text) {
        if (text.isEmpty()) {
            overlays.dismiss();
        } else {
            overlays.notice(text);
        }
        getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(text.isEmpty() ? null : text);
    }

    @Override
    protected void createGraphicalViewer(Composite parent) {
        GraphicalViewer viewer = new DiagramViewer();
        viewer.createControl(parent);
        setGraphicalViewer(viewer);
        configureGraphicalViewer();
        hookGraphicalViewer();
        initializeGraphicalViewer();
    }

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        GraphicalViewer viewer = getGraphicalViewer();
        Diagram diagram = new Diagram(viewer);
        context = new PlanContext(document, diagram, this::notice);
        navigator = new PlanNavigator(context);
        viewer.setRootEditPart(new DiagramRootPart(diagram, Arrays.asList(PlanLayer.values())));
        viewer.setEditPartFactory(new PlanPartFactory(context));
        ViewNavigation.install(viewer, diagram.view());
        PlaceRound.install(viewer, context, navigator);
        clipboard = new PlanClipboard(context);
        clipboard.actions().forEach(getActionRegistry()::registerAction);
        PlanCommands.round(context, navigator).forEach(getActionRegistry()::registerAction);
        viewer.setKeyHandler(PlanActions.withKeys(new PlanKeys(context), getActionRegistry()));
        eye = new PilotEye(context);
        terrain = new TerrainLayer(context);
        survey = new SurveyLayer(context);
        images = new ImageLayer(context);
        scaling = new ImageScaling(context, images, bar);
        surveys = new SurveyImports(context);
        commands = new PlanCommands(context, navigator, eye, scaling, this, clipboard, surveys);
        menu = new PlanMenu(context, navigator, getActionRegistry(), commands);
        viewer.setContextMenu(menu);
    }

    @Override
    protected void initializeGraphicalViewer() {
        overlays = new PlanOverlays(context);
        markers = new FindingMarkers(context);
        context.paintFirst(this::redraw);
        getGraphicalViewer().setContents(document.project());
        navigator.showAerodrome();
        terrain.update();
        survey.update();
        overlays.update();
        document.addListener(listener);
        document.lastResult().ifPresent(markers::show);
        document.viewState().addListener(viewListener);
        commands.connect(getEditorSite());
        getGraphicalViewer().addDropTargetListener(new PaletteDrop(getGraphicalViewer()));
        selection = new SharedSelection(context, navigator);
        picking = new SurveyPicking(context, survey);
        getGraphicalViewer().addSelectionChangedListener(event -> {
            overlays.update();
            selection.tell();
        });
        getGraphicalViewer().getControl().addListener(SWT.MouseMove, this::pointerMoved);
        getGraphicalViewer().getControl().addListener(SWT.MouseDown, event -> overlays.dismiss());
    }

    private void viewStateChanged() {
        eye.update();
        ((DiagramRootPart) getGraphicalViewer().getRootEditPart()).update(PlanLayer.DIMENSIONS);
        ((DiagramRootPart) getGraphicalViewer().getRootEditPart()).arrangeLabels();
    }

    private void pointerMoved(Event event) {
        context.setPointer(event.x, event.y);
        getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(null);
        getEditorSite().getActionBars().getStatusLineManager().setMessage(navigator.describe(event.x, event.y));
    }

    private void refreshPlan(Set<String> elementIds) {
        boolean wasEmpty = context.plane().isEmpty();
        context.invalidate(elementIds);
        overlays.dismiss();
        palette.update();
        eye.update();
        images.update();
        redraw();
        if (wasEmpty) {
            navigator.showAerodrome();
        }
        document.lastResult().ifPresent(markers::show);
    }

    /** Draws everything anew that follows from the evaluation. */
    private void redraw() {
        ((ElementPart<?>) getGraphicalViewer().getContents()).refreshAll();
        terrain.update();
        survey.update();
        overlays.update();
        ((DiagramRootPart) getGraphicalViewer().getRootEditPart()).arrangeLabels();
    }

    /** Returns what part of the world the plan shows. */
    public WorldView view() {
        return context.diagram().view();
    }

    /** Returns the viewer of the plan. */
    public GraphicalViewer viewer() {
        return getGraphicalViewer();
    }

    /** Asks what a survey file is to become; it stands open beside the plan until the user is done. */
    public void importSurvey(Path file) {
        surveys.open(file);
    }

    /** Returns why the last edit could not be made, empty where it could. */
    public String notice() {
        return overlays.notice();
    }

    /**
     * Lays a picture under the plan. Unless it is a GeoTIFF in the project's coordinate reference, the strip above the plan then asks for
     * two of its points and their places.
     *
     * @param file a PNG, JPEG or TIFF file
     */
    public void addImage(Path file) {
        scaling.add(file);
    }

    /** Returns the field above the plan into which coordinates are typed while a picture is scaled; hidden otherwise. */
    public Text imageField() {
        return bar.field();
    }

    /** Returns at how many elements the plan marks findings. */
    public int markedElements() {
        return markers.count();
    }

    @Override
    public void reveal(String elementId) {
        navigator.part(elementId).ifPresent(part -> {
            getGraphicalViewer().select(part);
            part.anchor().ifPresent(navigator::reveal);
        });
    }

    @Override
    public boolean isDirty() {
        return document.isDirty();
    }

    /** Returns the strip that says that another program changed the file; hidden otherwise. */
    public FileBar fileBar() {
        return fileBar;
    }

    @Override
    public int promptToSaveOnClose() {
        return files.askBeforeClosing();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return true;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (!files.save()) {
            monitor.setCanceled(true);
        }
        fileBar.look();
    }

    @Override
    public void doSaveAs() {
        files.choose().ifPresent(this::saveAs);
    }

    /**
     * Saves the project into a file, which the editor shows from then on, or tells the user in a dialog why that can't be done.
     *
     * @param file the file
     */
    public void saveAs(Path file) {
        IEditorPart open = getSite().getPage().findEditor(new ProjectInput(file));
        if (open != null && open != this) {
            files.refuse(file);
        } else if (files.saveAs(file)) {
            setInput(new ProjectInput(file));
            setPartName(getEditorInput().getName());
            firePropertyChange(PROP_INPUT);
        }
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Object getAdapter(Class type) {
        if (type == ProjectDocument.class) {
            return document;
        }
        if (type == PlanCommands.class) {
            return commands;
        }
        if (type == IPropertySheetPage.class) {
            return new ElementPropertyPage(document);
        }
        if (type == IContentOutlinePage.class) {
            return new PlanOutline(context, menu, getActionRegistry(), this);
        }
        return type == ElementRevealer.class ? this : super.getAdapter(type);
    }

    @Override
    public void dispose() {
        if (selection != null) {
            selection.dispose();
            picking.dispose();
        }
        if (document != null) {
            document.removeListener(listener);
            document.viewState().removeListener(viewListener);
            document.dispose();
        }
        super.dispose();
    }
}
