package org.strawblue.app.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.HistoryCsv;
import org.strawblue.app.report.paper.PictureImage;
import org.strawblue.app.report.picture.Drawing;
import org.strawblue.app.report.picture.Pictures;
import org.strawblue.app.report.picture.SvgWriter;
import org.strawblue.app.service.HeatStory;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.UnitSystem;

/** Leaves a heat in a folder: its history as a table, its pictures as drawings and images. */
final class HeatFiles {

    private final Path folder;
    private final AmountWriter writer;
    private final List<String> names = new ArrayList<>();

    private HeatFiles(Path folder, UnitSystem units) {
        this.folder = folder;
        this.writer = new AmountWriter(units);
    }

    /** @return the names of the files */
    static List<String> leave(HeatStory story, Path folder, UnitSystem units) {
        HeatFiles files = new HeatFiles(folder, units);
        try {
            Files.createDirectories(folder.toAbsolutePath());
            files.write("heat-history.csv", HistoryCsv.write(story, units).getBytes(StandardCharsets.UTF_8));
            files.picture("heat-clock", story.clock());
            if (story.section().isPresent()) {
                files.picture("heat-section", story.section().get());
            }
        } catch (IOException e) {
            throw new FileTrouble(folder.toAbsolutePath(), e);
        }
        return files.names;
    }

    private void picture(String name, Picture picture) throws IOException {
        Drawing drawing = Pictures.draw(picture, writer);
        write(name + ".svg", SvgWriter.alone(drawing).getBytes(StandardCharsets.UTF_8));
        write(name + ".png", PictureImage.png(drawing));
    }

    private void write(String name, byte[] bytes) throws IOException {
        WholeFile.write(folder.resolve(name), bytes);
        names.add(name);
    }
}
