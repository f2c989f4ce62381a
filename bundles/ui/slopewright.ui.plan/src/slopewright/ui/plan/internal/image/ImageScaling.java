package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.LayerConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.RemoveElement;
import slopewright.model.BackgroundImage;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.tools.PickTool;

/**
 * Lays a picture under a plan. A GeoTIFF in the project's coordinate reference places itself; any other picture is scaled by two points:
 * one in the picture, its place in the plan, and again.
 */
public final class ImageScaling {

    private static final Pattern PAIR = Pattern.compile("\\s*([+-]?[\\d.]+)\\s*[,;\\s]\\s*([+-]?[\\d.]+)\\s*");
    private static final double LEAST_APART_PX = 10;

    private final PlanContext context;
    private final ImageLayer layer;
    private final ImageBar bar;
    private final ImageEdits edits;
    private final MarkFigure marks;
    private final List<ScenePoint> pixels = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private Optional<BackgroundImage> current = Optional.empty();

    /**
     * Makes it for a plan.
     *
     * @param context the context
     * @param layer   draws the pictures
     * @param bar     leads through the steps
     */
    public ImageScaling(PlanContext context, ImageLayer layer, ImageBar bar) {
        this.context = context;
        this.layer = layer;
        this.bar = bar;
        this.edits = new ImageEdits(context);
        this.marks = MarkFigure.passive(context.diagram(), this::marks);
        bar.whenUsed(this::typed, this::end);
    }

    /** Returns whether there is a picture to scale or to remove. */
    public boolean hasImage() {
        return !layer.images().isEmpty();
    }

    /** Lets the user choose a file and lays it under the plan. */
    public void choose() {
        FileDialog dialog = new FileDialog(context.diagram().viewer().getControl().getShell(), SWT.OPEN);
        dialog.setText(Messages.get("image.dialog"));
        dialog.setFilterNames(new String[] {Messages.get("image.files")});
        dialog.setFilterExtensions(new String[] {"*.png;*.jpg;*.jpeg;*.tif;*.tiff;*.PNG;*.JPG;*.JPEG;*.TIF;*.TIFF"});
        String chosen = dialog.open();
        if (chosen != null) {
            add(Path.of(chosen));
        }
    }

    /** Lays a picture under the plan, and asks for its two points unless it places itself. */
    public void add(Path file) {
        if (context.plane().isEmpty()) {
            context.notice(Messages.get("image.no-place"));
            return;
        }
        Optional<Path> project = context.document().path();
        if (project.isEmpty()) {
            context.notice(Messages.get("image.save-first"));
            return;
        }
        try {
            Picture picture = Picture.read(file);
            Optional<GeoTags> tags = GeoTags.read(file);
            BackgroundImage image = edits.add(project.get(), file, picture, tags);
            layer.load(image);
            if (ImagePlacement.of(context, image).isEmpty()) {
                String reason = edits.refusal(tags);
                start();
                context.notice(reason);
            } else {
                context.notice(Messages.get("image.geo-placed", edits.reference()));
            }
        } catch (IOException | IllegalArgumentException e) {
            context.notice(Messages.get("image.unreadable", file.getFileName(), MessageTexts.reason(e)));
        }
    }

    /** Asks for the two points of the picture that was laid under the plan last. */
    public void start() {
        List<BackgroundImage> images = layer.images();
        if (images.isEmpty()) {
            return;
        }
        end();
        BackgroundImage image = images.get(images.size() - 1);
        try {
            if (layer.placement(image).isEmpty()) {
                layer.showProvisionally(image, layer.load(image));
            }
        } catch (IOException e) {
            context.notice(Messages.get("image.unreadable", image.getPath(), MessageTexts.reason(e)));
            return;
        }
        current = Optional.of(image);
        feedback().add(marks);
        domain().setActiveTool(new PickTool(this::picked, this::end));
        showStep();
    }

    /** Takes the picture that was laid under the plan last out again. */
    public void remove() {
        List<BackgroundImage> images = layer.images();
        if (!images.isEmpty()) {
            end();
            domain().getCommandStack().execute(new HistoryCommand(RemoveElement.of(images.get(images.size() - 1))));
        }
    }

    private EditDomain domain() {
        return context.diagram().viewer().getEditDomain();
    }

    private IFigure feedback() {
        return context.diagram().layer(LayerConstants.FEEDBACK_LAYER);
    }

    private void showStep() {
        boolean place = pixels.size() > places.size();
        bar.show(Messages.get("image.step" + (pixels.size() + places.size() + 1)), place,
                Messages.get(edits.isGeographic() ? "image.degrees" : "image.metres"));
        marks.update();
    }

    private void picked(Point at) {
        ScenePoint place = new ScenePoint(context.diagram().view().worldX(at.x), context.diagram().view().worldY(at.y));
        if (pixels.size() > places.size()) {
            ScenePoint known = KnownPoints.near(context, place);
            Place target = SlopewrightFactory.eINSTANCE.createPlace();
            context.plane().orElseThrow().toPlace(new PlanPoint(known.x(), known.y()), target);
            placed(target);
        } else {
            ScenePoint pixel = layer.placement(current.orElseThrow()).orElseThrow().toPicture(place);
            if (!pixels.isEmpty() && Math.hypot(pixel.x() - pixels.get(0).x(), pixel.y() - pixels.get(0).y()) < LEAST_APART_PX) {
                bar.problem(Messages.get("image.too-near"));
                return;
            }
            pixels.add(pixel);
            showStep();
        }
    }

    private void typed(String text) {
        Matcher pair = PAIR.matcher(text);
        try {
            if (pair.matches() && pixels.size() > places.size()) {
                placed(edits.place(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))));
                return;
            }
        } catch (IllegalArgumentException e) {
            bar.problem(Messages.get("image.no-coordinates", text, String.valueOf(e.getMessage())));
            return;
        }
        bar.problem(Messages.get("image.no-coordinates", text, Messages.get(edits.isGeographic() ? "image.degrees" : "image.metres")));
    }

    private void placed(Place place) {
        places.add(place);
        if (places.size() < 2) {
            showStep();
            context.diagram().viewer().getControl().setFocus();
            return;
        }
        Optional<ScenePoint> first = context.places().point(places.get(0));
        Optional<ScenePoint> second = context.places().point(places.get(1));
        if (first.isEmpty() || second.isEmpty() || ImagePlacement.of(pixels.get(0), first.get(), pixels.get(1), second.get()).isEmpty()) {
            places.remove(1);
            bar.problem(Messages.get("image.same-place"));
            return;
        }
        BackgroundImage image = current.orElseThrow();
        List<ScenePoint> points = List.copyOf(pixels);
        List<Place> targets = List.copyOf(places);
        end();
        domain().getCommandStack().execute(new HistoryCommand(edits.scale(image, points, targets)));
        layer.update();
    }

    /** Ends asking, whether all was answered or not. */
    private void end() {
        if (current.isPresent()) {
            layer.endProvisional(current.get());
            current = Optional.empty();
            feedback().remove(marks);
            domain().loadDefaultTool();
            bar.close();
            context.diagram().viewer().getControl().setFocus();
        }
        pixels.clear();
        places.clear();
    }

    private List<Mark> marks() {
        Marks drawn = new Marks("");
        double px = 1 / context.diagram().view().scale();
        Optional<ImagePlacement> placement = current.flatMap(layer::placement);
        for (int i = 0; i < pixels.size() && placement.isPresent(); i++) {
            ScenePoint at = placement.get().toPlan(pixels.get(i).x(), pixels.get(i).y());
            cross(drawn, at, px, Ink.WHEELS, String.valueOf(i + 1));
            if (i < places.size()) {
                Optional<ScenePoint> place = context.places().point(places.get(i));
                place.ifPresent(to -> drawn.line(Style.dashed(Ink.GREEN, 0.25), List.of(at, to)));
                String label = String.valueOf(i + 1);
                place.ifPresent(to -> cross(drawn, to, px, Ink.GREEN, label));
            }
        }
        return drawn.list();
    }

    private static void cross(Marks drawn, ScenePoint at, double px, Ink ink, String label) {
        Style style = Style.line(ink, 0.4);
        double arm = 9 * px;
        drawn.line(style, List.of(new ScenePoint(at.x() - arm, at.y()), new ScenePoint(at.x() + arm, at.y())));
        drawn.line(style, List.of(new ScenePoint(at.x(), at.y() - arm), new ScenePoint(at.x(), at.y() + arm)));
        drawn.disc(at, 1.2, style);
        drawn.text(new ScenePoint(at.x() + arm, at.y() + arm), label, Mark.Anchor.START, 2.4, 0, ink);
    }
}
