using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Who comes next: every owner as often as the size says, shuffled. An owner is new at the first visit.</summary>
internal sealed class OwnerDeck
{
    private readonly int[] _deck;
    private readonly Owner?[] _known;
    private readonly Dice _dice;
    private int _next;

    public OwnerDeck(SeasonSize size, Dice dice)
    {
        _dice = dice;
        _known = new Owner?[size.Owners];
        _deck = new int[size.AllJobs];
        var regulars = size.Owners / 10;
        for (var i = 0; i < _deck.Length; i++)
        {
            var visit = i - regulars * SeasonSize.RegularJobs;
            _deck[i] = visit < 0 ? i / SeasonSize.RegularJobs
                : visit < size.Owners - regulars ? regulars + visit
                : dice.Between(regulars, size.Owners - 1);
        }

        dice.Shuffle(_deck);
    }

    public (Owner Owner, bool IsNew) Next()
    {
        var place = _deck[_next++];
        var isNew = _known[place] is null;
        return (_known[place] ??= People.Owner(place, _dice), isNew);
    }
}
