package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Path;

/** Reads a picture as the plan does. */
public final class PictureProbe {

    private PictureProbe() {
    }

    /**
     * Reads pixels and geographic tags.
     *
     * @throws IOException where the picture is refused
     */
    public static void read(Path file) throws IOException {
        GeoTags.read(file);
        Picture.read(file);
    }
}
