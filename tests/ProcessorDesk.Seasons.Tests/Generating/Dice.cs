using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Chance from a seed: the same seed throws the same, in the same order.</summary>
internal sealed class Dice(int seed)
{
    private readonly Random _random = new(seed);

    public bool In(int percent) => _random.Next(100) < percent;

    /// <summary>Both ends can come.</summary>
    public int Between(int low, int high) => _random.Next(low, high + 1);

    public T Of<T>(IReadOnlyList<T> choices) => choices[_random.Next(choices.Count)];

    public TimeSpan Minutes(int low, int high) => TimeSpan.FromSeconds(Between(low * 60, high * 60));

    public void Shuffle<T>(T[] deck) => _random.Shuffle(deck);

    /// <summary>As a form's key looks: 32 digits.</summary>
    public string Key()
    {
        var bytes = new byte[16];
        _random.NextBytes(bytes);
        return Convert.ToHexStringLower(bytes);
    }

    /// <summary>About a part of a weight, give or take a tenth of it, to the hundredth of a pound.</summary>
    public Weight About(Weight whole, int percent) =>
        ScaleDivision.HundredthPound.Round(Weight.FromMilligrams(whole.Milligrams / 100 * percent / 100 * Between(90, 110)));
}
