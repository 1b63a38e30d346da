package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.strawblue.core.job.UnitSystem;

class CardJsonTest {

    @Test
    void everyFigureHasValueLimitsUnitAndSources() throws IOException {
        Map<String, Object> card = read(CardJson.write(SampleCard.plunger(), UnitSystem.METRIC));
        int figures = 0;
        for (Map<String, Object> step : objects(card.get("steps"))) {
            for (Map<String, Object> figure : objects(step.get("figures"))) {
                assertThat(figure).containsKeys("label", "value", "low", "high", "unit", "sources");
                assertThat((double) figure.get("low")).isLessThanOrEqualTo((double) figure.get("value"));
                assertThat((double) figure.get("high")).isGreaterThanOrEqualTo((double) figure.get("value"));
                figures++;
            }
        }
        assertThat(figures).isEqualTo(16);
    }

    @Test
    void numbersAreInOneUnitForEachDimension() throws IOException {
        Map<String, Object> metric = figure(CardJson.write(SampleCard.plunger(), UnitSystem.METRIC), 3, 1);
        assertThat(metric).containsEntry("unit", "°C").containsEntry("value", 202.05);
        Map<String, Object> inch = figure(CardJson.write(SampleCard.plunger(), UnitSystem.INCH), 3, 1);
        assertThat(inch).containsEntry("unit", "°F").containsEntry("value", 395.69);
        Map<String, Object> film = figure(CardJson.write(SampleCard.plunger(), UnitSystem.METRIC), 3, 2);
        assertThat(film).containsEntry("unit", "mm").containsEntry("value", 0.000038);
    }

    @Test
    void sentencesCarryTheirNumbers() throws IOException {
        Map<String, Object> card = read(CardJson.write(SampleCard.plunger(), UnitSystem.METRIC));
        Map<String, Object> lead = object(objects(card.get("steps")).get(3).get("lead"));
        assertThat((String) lead.get("text")).startsWith("Hold in the oven at 196–208 °C (385–406 °F) for 1 h");
        assertThat(objects(lead.get("numbers")).get(0))
                .containsEntry("low", 196.0)
                .containsEntry("high", 208.0)
                .containsEntry("unit", "°C");
        assertThat(objects(lead.get("numbers")).get(1))
                .containsEntry("value", 3600.0)
                .containsEntry("unit", "s");
    }

    @Test
    void refusalAndFindingsAreTold() throws IOException {
        Map<String, Object> card = read(CardJson.write(SampleCard.refused(), UnitSystem.METRIC));
        assertThat(card).containsEntry("refused", true);
        assertThat(objects(card.get("findings")).get(0))
                .containsEntry("kind", "stop")
                .containsKeys("what", "why", "remedy");
        assertThat(read(CardJson.write(SampleCard.hostile(), UnitSystem.METRIC)))
                .containsKey("title");
    }

    private static Map<String, Object> figure(String json, int step, int figure) throws IOException {
        Map<String, Object> steps = objects(read(json).get("steps")).get(step);
        return objects(steps.get("figures")).get(figure);
    }

    private static Map<String, Object> read(String json) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            parser.nextToken();
            return object(value(parser));
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> object = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    object.put(name, value(parser));
                }
                yield object;
            }
            case START_ARRAY -> {
                List<Object> array = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(parser));
                }
                yield array;
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            case VALUE_NULL -> "null";
            default -> parser.getText();
        };
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> object(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> objects(Object value) {
        return (List<Map<String, Object>>) value;
    }
}
