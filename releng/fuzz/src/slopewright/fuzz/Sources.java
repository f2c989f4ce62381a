package slopewright.fuzz;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

import javax.imageio.ImageIO;

import slopewright.exchange.survey.SurveyFormat;
import slopewright.model.io.ProjectFileException;

/** What is broken: whole files by what they are. */
record Sources(Path folder, List<Path> projects) {

    static Sources of(Path root, Path folder) throws IOException, ProjectFileException {
        List<Path> projects = List.of(root.resolve("demo-data/harrow-vale/harrow-vale.slopewright"),
                root.resolve("demo-data/every-family/every-family.slopewright"),
                root.resolve("demo-data/harrow-vale-faults/harrow-vale-faults.slopewright"));
        Sources sources = new Sources(folder, projects);
        for (Path project : projects) {
            sources.put("slopewright", project.getFileName().toString(), Files.readAllBytes(project));
        }
        for (Map.Entry<String, byte[]> small : SmallProjects.of(projects.get(1)).entrySet()) {
            sources.put("small", small.getKey(), small.getValue());
        }
        sources.put("little", "little.slopewright", SmallProjects.of(projects.get(0)).values().iterator().next());
        try (Stream<Path> surveys = Files.walk(root.resolve("demo-data/harrow-vale/survey"))) {
            for (Path survey : surveys.filter(each -> Files.isRegularFile(each) && !each.toString().endsWith(".md")).toList()) {
                String name = survey.getFileName().toString();
                boolean isShape = "shapefile".equals(survey.getParent().getFileName().toString());
                sources.put(name.endsWith(".swpoints") ? "swpoints" : !isShape ? "survey" : name.endsWith(".shp") ? "shapes" : "beside",
                        name, Files.readAllBytes(survey));
            }
        }
        for (String name : List.of("float-deflate-tiled.tif", "int16-lzw.tif", "float-bigtiff-predictor3.tif", "obstacles.xlsx", "light.dxf",
                "N47W012.hgt.gz", "obstacles.gpkg.gz", "canopy.gpkg.gz")) {
            sources.put("survey", name.replace(".gz", ""), other(root, name));
        }
        sources.put("survey", "cloud.las", Samples.cloud());
        sources.put("survey", "land.xml", Samples.LAND_XML.getBytes(StandardCharsets.UTF_8));
        sources.put("survey", "obstacle.xml", Samples.AIXM.getBytes(StandardCharsets.UTF_8));
        sources.refuseMissingFormats();
        sources.put("runways", "runways.sqlite", other(root, "runways.sqlite.gz"));
        sources.put("runways", "runways.csv", Samples.RUNWAYS.getBytes(StandardCharsets.UTF_8));
        sources.put("ends", "ends.csv", Samples.ENDS.getBytes(StandardCharsets.UTF_8));
        sources.put("point-table", "points.csv", Samples.POINTS.getBytes(StandardCharsets.UTF_8));
        sources.put("template", "cover.html", "<h1>{{title}}</h1>\n<p>{{aerodrome}}</p>\n{{verdict}}\n{{cautions}}\n".getBytes());
        sources.put("template", "style.css", "h1 { color: #203040; font-size: 18pt }\np { margin: 2mm }\n".getBytes());
        sources.put("template", "logo.svg", ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">\n"
                + "<path d=\"M0 0L10 10\" fill=\"#123\"/>\n<g>\n<circle cx=\"5\" cy=\"5\" r=\"2\"/>\n</g>\n</svg>\n").getBytes());
        Path block = Files.createDirectories(folder.resolve("block"));
        Kind.command("import", root.resolve("demo-data/harrow-vale/survey/canopy-points.csv").toString(), "--into",
                projects.get(0).toString(), "-o", block.resolve("p.slopewright").toString(), "--force", "--as", "obstacle-block");
        try (Stream<Path> points = Files.list(block)) {
            for (Path file : points.filter(each -> each.toString().endsWith(".swpoints")).toList()) {
                sources.put("swpoints", "block.swpoints", Files.readAllBytes(file));
            }
        }
        Path book = folder.resolve("book").resolve("values.csv");
        Files.createDirectories(book.getParent());
        if (!Files.exists(book)) {
            Kind.command("book", book.toString(), "--collect", projects.get(1).toString());
        }
        if (!Files.exists(folder.resolve("rules"))) {
            Kind.command("rule-sets", "--new", folder.resolve("rules").toString(), "--over", "icao:9th");
        }
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        image.setRGB(3, 4, 0xff8800);
        for (String form : List.of("png", "jpg", "tif")) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, form, out);
            sources.put("picture", "a." + form, out.toByteArray());
        }
        sources.put("words", "words.txt", ("check PROJECT --json --fail-on note\nsite PROJECT --end 09 --family four-unit-row\n"
                + "signal PROJECT --aid approach-aid-1 --along-m -3000 --right-m 0 --height-m 150\ncompare PROJECT --end 09\n"
                + "site --family two-bar --slope-deg 3 --runway-width-m 45 --code 4 --approach visual --eye-to-wheel-m 6\n"
                + "surface PROJECT --aid approach-aid-1\ntolerance PROJECT --aid approach-aid-1 --samples 50\nfamilies\n"
                + "rules --json\nvariation --latitude 51 --longitude -1 --date 2026-06-01\nschedule PROJECT -o OUT.xlsx --force\n"
                + "export PROJECT -o OUT.kml\nportable PROJECT --aid approach-aid-4 --slope-deg 6ft\n"
                + "directions PROJECT --helipad helipad-1\nbook PROJECT\n").getBytes());
        return sources;
    }

    /** A file that another program wrote, unpacked. */
    private static byte[] other(Path root, String name) throws IOException {
        byte[] bytes = Files.readAllBytes(root.resolve("bundles/tests/slopewright.exchange.tests/src/others").resolve(name));
        if (!name.endsWith(".gz")) {
            return bytes;
        }
        try (InputStream unpacked = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return unpacked.readAllBytes();
        }
    }

    /** Ends where the product reads a format of surveys of which there is no file to break. */
    private void refuseMissingFormats() throws IOException {
        List<Path> files = new ArrayList<>(of("survey"));
        files.addAll(of("shapes"));
        for (SurveyFormat format : ServiceLoader.load(SurveyFormat.class, SurveyFormat.class.getClassLoader())) {
            if (files.stream().noneMatch(file -> format.endings().stream().anyMatch(ending -> file.toString().endsWith("." + ending)))) {
                throw new IllegalStateException("no file of " + format.name() + " is fed: add one to the sources");
            }
        }
    }

    private void put(String corpus, String name, byte[] bytes) throws IOException {
        Files.write(Files.createDirectories(folder.resolve(corpus)).resolve(name), bytes);
    }

    List<Path> of(String corpus) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(corpus))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** A project of one aid, for what is not about the project: a whole one costs a hundred times the reading. */
    Path little() {
        return folder.resolve("little").resolve("little.slopewright");
    }

    /** The project that the words of a command line speak of. */
    Path small() {
        return folder.resolve("slopewright").resolve("harrow-vale.slopewright");
    }
}
