package slopewright.report.internal.template;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.ByteChannel;
import java.nio.channels.Channels;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import slopewright.messages.Message;
import slopewright.report.ReportException;

/**
 * The files of a template that count, read once, each with a limit of its size. What lies in folders of the folder, and files of other
 * names, are left alone; a link in the place of a file that counts is refused, wherever it points.
 *
 * @param texts    fragments and style by file name
 * @param pictures pictures by file name, made new as portable network graphics
 */
public record TemplateFolder(Map<String, String> texts, Map<String, byte[]> pictures) {

    /** Names of the files of text. */
    static final List<String> TEXTS = List.of("cover.html", "report.html", "running.html", "sign-off.html", "style.css");

    /** Greatest size of a text. */
    static final int GREATEST_TEXT_BYTES = 256 * 1024;

    /** Greatest size of a picture. */
    static final int GREATEST_PICTURE_BYTES = 2 * 1024 * 1024;

    private static final Pattern PICTURE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]*\\.(png|jpg|svg)");
    private static final int MOST_PICTURES = 12;

    /**
     * Reads a folder.
     *
     * @param folder the folder
     * @return what counts in it
     * @throws ReportException where it cannot be read or a file may not be in a template; the message says why
     */
    public static TemplateFolder read(Path folder) throws ReportException {
        if (!Files.isDirectory(folder)) {
            throw TemplateFault.in(folder.toString(), Message.of("template.no-folder"), null);
        }
        Map<String, String> texts = new TreeMap<>();
        Map<String, byte[]> pictures = new TreeMap<>();
        for (Path file : files(folder)) {
            String name = file.getFileName().toString();
            if (TEXTS.contains(name)) {
                texts.put(name, text(name, bytes(file, GREATEST_TEXT_BYTES)));
            } else if (PICTURE.matcher(name).matches()) {
                if (pictures.size() == MOST_PICTURES) {
                    throw TemplateFault.in(folder.toString(), Message.said("template.pictures", MOST_PICTURES), null);
                }
                pictures.put(name, TemplatePictures.portable(name, bytes(file, GREATEST_PICTURE_BYTES)));
            }
        }
        return new TemplateFolder(texts, pictures);
    }

    /** Returns the template that comes with the product, which has no files of its own. */
    public static TemplateFolder builtIn() {
        return new TemplateFolder(Map.of(), Map.of());
    }

    /** Copies the maps. */
    public TemplateFolder {
        texts = Map.copyOf(texts);
        pictures = Map.copyOf(pictures);
    }

    /** Returns whether it has files of its own. */
    public boolean isOwn() {
        return !texts.isEmpty() || !pictures.isEmpty();
    }

    /** Returns the text of a file of its own; empty where the built-in one counts. */
    Optional<String> own(String file) {
        return Optional.ofNullable(texts.get(file));
    }

    /** Returns the text of a file; the built-in one stands in for one that it does not have. */
    public String text(String file) {
        return own(file).orElseGet(() -> TemplateFiles.builtIn(file));
    }

    /** Returns the bytes of one of its pictures; empty where there is none of the name. */
    public Optional<byte[]> picture(String file) {
        return Optional.ofNullable(pictures.get(file));
    }

    /** Returns whether a picture may bear a name. */
    static boolean isPicture(String name) {
        return PICTURE.matcher(name).matches();
    }

    private static List<Path> files(Path folder) throws ReportException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw TemplateFault.in(folder.toString(), Message.said("template.unreadable-folder", e), e);
        }
    }

    private static byte[] bytes(Path file, int most) throws ReportException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw TemplateFault.in(name, Message.of("template.no-plain-file"), null);
        }
        Set<OpenOption> plainly = Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
        try (ByteChannel channel = Files.newByteChannel(file, plainly); InputStream in = Channels.newInputStream(channel)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw TemplateFault.in(name, Message.said("template.large", most / 1024), null);
            }
            return bytes;
        } catch (IOException e) {
            throw TemplateFault.in(name, Message.said("project-file.unreadable", e), e);
        }
    }

    private static String text(String name, byte[] bytes) throws ReportException {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw TemplateFault.in(name, Message.of("template.no-text"), e);
        }
    }
}
