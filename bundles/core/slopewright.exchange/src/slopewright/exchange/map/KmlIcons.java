package slopewright.exchange.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.imageio.ImageIO;

/** Icons of the points of a map: a shape a kind, so that colour is not the only sign. */
final class KmlIcons {

    private static final int SIZE = 48;
    private static final int EDGE = 6;
    private static final float LINE = 4;

    private KmlIcons() {
    }

    /** Returns where the icon of a kind lies in the packed file. */
    static String path(MapStyle kind) {
        return "icons/" + kind.kind() + ".png";
    }

    /** Paints the icon of a kind; the same bytes each time. */
    static byte[] png(MapStyle kind) {
        BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setStroke(new BasicStroke(LINE));
        Polygon shape = shape(kind);
        graphics.setColor(Color.decode("#" + kind.rgb()));
        graphics.fillPolygon(shape);
        graphics.setColor(Color.WHITE);
        graphics.drawPolygon(shape);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static Polygon shape(MapStyle kind) {
        int far = SIZE - EDGE;
        int middle = SIZE / 2;
        return switch (kind) {
            case UNIT -> polygon(EDGE, middle - EDGE, far, middle - EDGE, far, middle + EDGE, EDGE, middle + EDGE);
            case OBSTACLE -> polygon(middle, EDGE, far, far, EDGE, far);
            case SURVEY_POINT -> polygon(middle, middle - EDGE, middle + EDGE, middle, middle, middle + EDGE, middle - EDGE, middle);
            case THRESHOLD -> polygon(middle - EDGE / 2, EDGE, middle + EDGE / 2, EDGE, middle + EDGE / 2, far, middle - EDGE / 2, far);
            default -> polygon(middle, EDGE, far, middle, middle, far, EDGE, middle);
        };
    }

    private static Polygon polygon(int... xy) {
        Polygon polygon = new Polygon();
        for (int i = 0; i < xy.length; i += 2) {
            polygon.addPoint(xy[i], xy[i + 1]);
        }
        return polygon;
    }
}
