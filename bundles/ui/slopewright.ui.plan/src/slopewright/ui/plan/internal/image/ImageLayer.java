package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.BackgroundImage;
import slopewright.model.io.ProjectPicture;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;

/** Draws the pictures that lie under a plan. Files are read in the background, once. */
public final class ImageLayer extends Figure {

    private static final double USUAL_OPACITY_PERCENT = 70;
    private static final int OPAQUE = 255;

    private final PlanContext context;
    private final Control control;
    private final Map<Key, Loaded> loaded = new HashMap<>();
    private final Set<Key> pending = new HashSet<>();
    private final Map<BackgroundImage, ImagePlacement> provisional = new HashMap<>();

    /** Which file with which content. */
    private record Key(String path, String sha256) {

        static Key of(BackgroundImage image) {
            return new Key(String.valueOf(image.getPath()), image.getSha256());
        }
    }

    /** A picture for the screen with the size of its file. */
    private record Loaded(Image image, Picture picture) {
    }

    /** Lays the layer under a plan. */
    public ImageLayer(PlanContext context) {
        this.context = context;
        this.control = context.diagram().viewer().getControl();
        context.diagram().layer(PlanLayer.IMAGES).add(this);
        context.diagram().view().addListener(this::update);
        control.addListener(SWT.Dispose, event -> loaded.values().forEach(picture -> picture.image().dispose()));
        update();
    }

    /** Draws anew after the view or the project has changed. */
    public void update() {
        setBounds(new Rectangle(0, 0, (int) context.diagram().view().widthPx(), (int) context.diagram().view().heightPx()));
        repaint();
    }

    List<BackgroundImage> images() {
        return context.project().getAerodrome() == null ? List.of() : context.project().getAerodrome().getBackgroundImages();
    }

    private Path file(Key key) throws IOException {
        Path project = context.document().path().orElseThrow(() -> new NoSuchFileException(key.path()));
        return ProjectPicture.of(project, key.path(), Optional.ofNullable(key.sha256()));
    }

    /**
     * Returns the picture of a file, read at once.
     *
     * @throws IOException where the file is none that may be shown, or cannot be read; the reason says so
     */
    Picture load(BackgroundImage image) throws IOException {
        Key key = Key.of(image);
        Loaded known = loaded.get(key);
        if (known != null) {
            return known.picture();
        }
        Picture picture = Picture.read(file(key));
        keep(key, picture);
        return picture;
    }

    private void keep(Key key, Picture picture) {
        Loaded old = loaded.put(key, new Loaded(new Image(control.getDisplay(), picture.data()), picture));
        if (old != null) {
            old.image().dispose();
        }
        repaint();
    }

    private void loadSoon(Key key) {
        if (!pending.add(key)) {
            return;
        }
        ICoreRunnable work = monitor -> {
            try {
                Picture picture = Picture.read(file(key));
                onControl(() -> keep(key, picture));
            } catch (IOException e) {
                onControl(() -> context.notice(Messages.get("image.unreadable", key.path(), MessageTexts.reason(e))));
            }
        };
        Job job = Job.createSystem(Messages.get("image.loading"), work);
        job.schedule();
    }

    private void onControl(Runnable work) {
        control.getDisplay().asyncExec(() -> {
            if (!control.isDisposed()) {
                work.run();
            }
        });
    }

    /** Shows a picture that was not placed yet in the middle of the view, until it is. */
    void showProvisionally(BackgroundImage image, Picture picture) {
        WorldView view = context.diagram().view();
        double share = Math.max(picture.widthPx() / view.widthPx(), picture.heightPx() / view.heightPx()) / 0.9;
        double metres = 1 / (view.scale() * Math.max(share, 1e-6));
        ScenePoint middle = new ScenePoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2));
        provisional.put(image, new ImagePlacement(metres, 0, middle.x() - metres * picture.widthPx() / 2,
                middle.y() + metres * picture.heightPx() / 2));
        update();
    }

    /** Ends what was shown provisionally. */
    void endProvisional(BackgroundImage image) {
        provisional.remove(image);
        update();
    }

    /** Returns how a picture lies now, empty where it was not placed. */
    Optional<ImagePlacement> placement(BackgroundImage image) {
        return Optional.ofNullable(provisional.get(image)).or(() -> ImagePlacement.of(context, image));
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        for (BackgroundImage image : images()) {
            Optional<ImagePlacement> placement = placement(image);
            if (!Boolean.TRUE.equals(image.getHidden()) && placement.isPresent()) {
                Key key = Key.of(image);
                Loaded known = loaded.get(key);
                if (known == null) {
                    loadSoon(key);
                } else {
                    paint(graphics, image, placement.get(), known);
                }
            }
        }
    }

    private void paint(Graphics graphics, BackgroundImage image, ImagePlacement placement, Loaded known) {
        WorldView view = context.diagram().view();
        double opacity = image.getOpacityPercent() == null ? USUAL_OPACITY_PERCENT : image.getOpacityPercent();
        double perPixel = placement.metresPerPixel() * view.scale() * known.picture().widthPx() / known.picture().data().width;
        graphics.pushState();
        graphics.setAlpha((int) Math.round(OPAQUE * Math.max(0, Math.min(100, opacity)) / 100));
        graphics.translate((float) view.toX(placement.x()), (float) view.toY(placement.y()));
        graphics.rotate((float) -placement.turnDeg());
        graphics.scale((float) perPixel);
        graphics.drawImage(known.image(), 0, 0);
        graphics.popState();
    }
}
