package org.drillsheaf.handout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.page.Messages;
import org.drillsheaf.handout.paint.Logo;
import org.drillsheaf.handout.paint.Picture;

/** Reads templates, phrases and the house style from disk, once; printing itself reads nothing. */
public final class HandoutFiles {
    private static final long LARGEST_TEMPLATE = 1 << 20;

    private HandoutFiles() {}

    /**
     * A printer with everything it needs.
     *
     * @param templates folder with {@code *.ftlx} and {@code messages/*.yaml}
     * @param house the clinic's house style
     * @param houseSchema its schema
     * @return empty when {@code problems} got an error
     */
    public static Optional<HandoutPrinter> load(Path templates, Path house, Path houseSchema, Problems problems) {
        Problems found = new Problems();
        Optional<HandoutPrinter> printer = text(house, found)
                .flatMap(t -> load(templates, house.toString(), t, Optional.of(house), houseSchema, found));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : printer;
    }

    /**
     * The same with a house style that lies in no file; a logo, which would lie beside it, is left out.
     *
     * @param name what to call the style in a message
     * @param house the style as YAML
     */
    public static Optional<HandoutPrinter> load(
            Path templates, String name, String house, Path houseSchema, Problems problems) {
        return load(templates, name, house, Optional.empty(), houseSchema, problems);
    }

    private static Optional<HandoutPrinter> load(
            Path templates, String name, String house, Optional<Path> file, Path houseSchema, Problems problems) {
        Problems found = new Problems();
        Map<String, String> sources = templates(templates, found);
        Map<String, Messages> messages = new TreeMap<>();
        for (Path phrases : list(templates.resolve("messages"), ".yaml", found)) {
            yaml(phrases, found)
                    .flatMap(node -> MessagesReader.read(node, found))
                    .ifPresent(m -> messages.put(m.language(), m));
        }
        if (!messages.containsKey("en") && !found.hasErrors()) {
            found.error(templates.toString(), 0, "The English phrases are missing", "Put back messages/en.yaml");
        }
        Optional<HouseStyle> style = style(name, house, file, houseSchema, found);
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : style.map(s -> new HandoutPrinter(sources, messages, s));
    }

    private static Optional<HouseStyle> style(
            String name, String house, Optional<Path> file, Path schema, Problems problems) {
        Optional<YamlNode> node = YamlNode.parse(name, house, problems);
        Optional<String> schemaText = text(schema, problems);
        if (node.isEmpty() || schemaText.isEmpty()) {
            return Optional.empty();
        }
        Problems shape = new Problems();
        YamlSchema.of(schemaText.get()).check(node.get(), shape);
        problems.addAll(shape.all());
        if (shape.hasErrors()) {
            return Optional.empty();
        }
        Problems found = new Problems();
        Optional<Picture> logo =
                file.flatMap(path -> node.get().text("logo").flatMap(own -> logo(path.resolveSibling(own), found)));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : HouseStyleReader.read(node.get(), logo, problems);
    }

    /** The house style and, where it names one, the logo beside it: all that a copy of the style needs. */
    public static List<Path> styleFiles(Path house) {
        List<Path> files = new ArrayList<>(List.of(house));
        Problems ignored = new Problems(); // a style that cannot be read is told when it is used
        yaml(house, ignored)
                .flatMap(node -> node.text("logo"))
                .map(house::resolveSibling)
                .ifPresent(files::add);
        return files;
    }

    private static Optional<Picture> logo(Path file, Problems problems) {
        try {
            if (Files.size(file) > LARGEST_TEMPLATE) {
                problems.error(file.toString(), 0, "The logo is larger than a megabyte", "Make it smaller");
                return Optional.empty();
            }
            return Logo.read(file.toString(), Files.readAllBytes(file), problems);
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The logo cannot be read", "Put it beside the house style");
            return Optional.empty();
        }
    }

    private static Map<String, String> templates(Path folder, Problems problems) {
        Map<String, String> sources = new TreeMap<>();
        for (Path file : list(folder, ".ftlx", problems)) {
            text(file, problems).ifPresent(t -> sources.put(file.getFileName().toString(), t));
        }
        return sources;
    }

    private static List<Path> list(Path folder, String ending, Problems problems) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            problems.error(folder.toString(), 0, "The folder cannot be read", "Check its name and your rights");
            return List.of();
        }
    }

    private static Optional<YamlNode> yaml(Path file, Problems problems) {
        return text(file, problems).flatMap(t -> YamlNode.parse(file.toString(), t, problems));
    }

    private static Optional<String> text(Path file, Problems problems) {
        try {
            if (Files.size(file) > LARGEST_TEMPLATE) {
                problems.error(file.toString(), 0, "The file is larger than a megabyte", "Make it smaller");
                return Optional.empty();
            }
            return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The file cannot be read", "Check its name and that it is UTF-8 text");
            return Optional.empty();
        }
    }
}
