package slopewright.ui.diagram.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.Rectangle;

import slopewright.drawing.scene.Mark;
import slopewright.ui.diagram.Diagram;

/**
 * A figure that paints marks of a scene. It asks for them again after each change of the view, so that symbols may keep their size on the
 * screen. Only its marks can be hit, not the rectangle around them.
 */
public class MarkFigure extends Figure {

    private static final double NEAR_PX = 4;

    private final MarkPainter painter;
    private final Supplier<List<Mark>> source;
    private final boolean hittable;
    private Optional<Supplier<String>> description = Optional.empty();
    private List<Mark> wanted = List.of();
    private List<Mark> marks = List.of();
    private List<Mark> arranged = new ArrayList<>();

    /**
     * Makes a figure.
     *
     * @param diagram the diagram that it belongs to
     * @param source  gives the marks, the lowest first
     */
    public MarkFigure(Diagram diagram, Supplier<List<Mark>> source) {
        this(diagram, source, true);
    }

    private MarkFigure(Diagram diagram, Supplier<List<Mark>> source, boolean hittable) {
        this.hittable = hittable;
        this.painter = new MarkPainter(diagram.view(), diagram.fonts());
        this.source = source;
    }

    /** Makes a figure that the mouse does not see, such as feedback. */
    public static MarkFigure passive(Diagram diagram, Supplier<List<Mark>> source) {
        return new MarkFigure(diagram, source, false);
    }

    /** Asks for the marks again and takes the room that they need. */
    public void update() {
        wanted = source.get();
        arranged = new ArrayList<>(wanted);
        settle();
    }

    /** Returns the marks as they were given, before their labels were arranged. */
    List<Mark> wantedMarks() {
        return wanted;
    }

    /** Shows a label in another place than it was given, or what stands for it. */
    void showLabel(int index, Mark mark) {
        arranged.set(index, mark);
    }

    /** Returns what no label may cover. */
    protected List<Rectangle> reserved() {
        return List.of();
    }

    /** Takes the room that the arranged marks need. */
    void settle() {
        marks = List.copyOf(arranged);
        Rectangle box = null;
        for (Mark mark : marks) {
            Rectangle room = painter.bounds(mark);
            if (!room.isEmpty()) {
                box = box == null ? room : box.union(room);
            }
        }
        setBounds(box == null ? new Rectangle() : box);
        repaint();
    }

    /** Returns the marks that are painted. */
    public List<Mark> marks() {
        return marks;
    }

    /** Says what the tooltip tells; asked for when it is shown. */
    public void setDescription(Supplier<String> text) {
        description = Optional.of(text);
    }

    @Override
    public IFigure getToolTip() {
        return description.<IFigure>map(text -> new Label(text.get())).orElse(null);
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        painter.paint(graphics, marks);
    }

    @Override
    public boolean containsPoint(int x, int y) {
        boolean near = hittable && getBounds().getExpanded(2, 2).contains(x, y);
        return near && marks.stream().anyMatch(mark -> painter.hits(mark, x, y, NEAR_PX));
    }
}
