package org.strawblue.core.glow;

import java.util.List;

/**
 * How steel looks at one temperature.
 *
 * @param names heat colours it may be called, the likeliest first
 * @param luminance of its glow [cd/m²]
 * @param shopLuminance of the shop's light on it [cd/m²]; where that is the greater, the glow is hard to judge
 * @param hex a swatch of the glow alone
 */
public record GlowReading(List<GlowColour> names, double luminance, double shopLuminance, String hex) {

    public GlowReading {
        names = List.copyOf(names);
    }
}
