package org.drillsheaf.handout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.paint.Logo;
import org.drillsheaf.handout.paint.Picture;
import org.drillsheaf.saying.Messages;
import org.drillsheaf.saying.MessagesReader;

/** Reads templates, phrases and the house style from disk, once; printing itself reads nothing. */
public final class HandoutFiles {
    private static final long LARGEST_TEMPLATE = 1 << 20;

    private HandoutFiles() {}

    /**
     * A printer with everything it needs.
     *
     * @param templates folder with {@code *.ftlx} and {@code messages/*.yaml}
     * @param house the clinic's house style; its logo lies beside it
     * @param houseSchema its schema
     * @return empty when {@code problems} got an error
     */
    public static Optional<HandoutPrinter> load(Path templates, Path house, Path houseSchema, Problems problems) {
        return load(List.of(templates), house, houseSchema, problems);
    }

    /** The same with templates of several folders; one of the same name in a later folder takes the place of an earlier one. */
    public static Optional<HandoutPrinter> load(List<Path> templates, Path house, Path houseSchema, Problems problems) {
        return style(house, problems).flatMap(style -> load(templates, style, houseSchema, problems));
    }

    /** The same with a house style that may lie in no file. */
    public static Optional<HandoutPrinter> load(
            List<Path> templates, StyleText style, Path houseSchema, Problems problems) {
        Problems found = new Problems();
        Map<String, String> sources = new TreeMap<>();
        Map<String, Messages> messages = new TreeMap<>();
        for (Path folder : templates) {
            sources.putAll(templates(folder, found));
            Path phrases = folder.resolve("messages");
            for (Path file : folder.equals(templates.get(0)) || Files.isDirectory(phrases)
                    ? list(phrases, ".yaml", found)
                    : List.<Path>of()) {
                yaml(file, found)
                        .flatMap(node -> MessagesReader.read(node, found))
                        .ifPresent(m -> messages.put(m.language(), m));
            }
        }
        if (!messages.containsKey("en") && !found.hasErrors()) {
            found.error(templates.get(0).toString(), 0, "The English phrases are missing", "Put back messages/en.yaml");
        }
        Optional<HouseStyle> read = style(style, houseSchema, found);
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : read.map(s -> new HandoutPrinter(sources, messages, s));
    }

    /** A style that lies in a file, with the logo beside it; empty when {@code problems} got an error. */
    public static Optional<StyleText> style(Path house, Problems problems) {
        Problems found = new Problems();
        Optional<String> text = text(house, found);
        Optional<Path> named = text.flatMap(t -> YamlNode.parse(house.toString(), t, new Problems()))
                .flatMap(node -> node.text("logo"))
                .map(house::resolveSibling);
        Optional<byte[]> logo = named.flatMap(file -> bytes(file, found));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : text.map(t -> new StyleText(house.toString(), t, logo));
    }

    private static Optional<HouseStyle> style(StyleText style, Path schema, Problems problems) {
        Optional<YamlNode> node = YamlNode.parse(style.name(), style.yaml(), problems);
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
                style.logo().flatMap(bytes -> node.get().text("logo").flatMap(name -> Logo.read(name, bytes, found)));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : HouseStyleReader.read(node.get(), logo, problems);
    }

    private static Optional<byte[]> bytes(Path logo, Problems problems) {
        try {
            if (Files.size(logo) > LARGEST_TEMPLATE) {
                problems.error(logo.toString(), 0, "The logo is larger than a megabyte", "Make it smaller");
                return Optional.empty();
            }
            return Optional.of(Files.readAllBytes(logo));
        } catch (IOException e) {
            problems.error(logo.toString(), 0, "The logo cannot be read", "Put it beside the house style");
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
