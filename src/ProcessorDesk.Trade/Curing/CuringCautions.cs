namespace ProcessorDesk.Trade.Curing;

/// <summary>A caution that stands where curing salts are handled.</summary>
/// <param name="Source">Where it is published, or "common practice, no source".</param>
public sealed record CuringCaution(string Id, string Text, string Source);

/// <summary>The usual cautions for curing salts. They defer to local rules and to whoever is licensed to judge.</summary>
public static class CuringCautions
{
    private const string Practice = "common practice, no source";

    public static IReadOnlyList<CuringCaution> All { get; } =
    [
        new("cure.label", "Read the strength on the maker's label and enter it. Cures of one colour differ in strength.", Practice),
        new("cure.weigh", "Weigh the cure on the small scale. Never use a spoon or a scoop: a spoonful is not a weight.", Practice),
        new("cure.second", "Have the weight checked a second time, after setting the scale to zero.", Practice),
        new("cure.once", "One dose to a mix. Tick it off when it is in, so that nobody adds it again.", Practice),
        new("cure.store", "Keep cure in its own marked, closed box, away from salt and spice and out of reach of children. It is pink so that nobody takes it for salt.", Practice),
        new("cure.apart", "Keep cure and spices apart until they go into the mix.", "21 CFR 170.60"),
        new("cure.nitrate", "Do not use a cure with nitrate in sausage that is to be cooked.", Practice),
        new("cure.swallowed", "Cure eaten as salt can kill. If somebody has eaten any, call a doctor or poison control at once.", Practice),
        new("cure.local", "These figures are a guide. Your inspector's and your state's rules go before them.", Practice),
    ];
}
