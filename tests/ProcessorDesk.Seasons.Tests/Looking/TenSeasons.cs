using ProcessorDesk.Seasons.Tests.Generating;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>A hundred thousand jobs.</summary>
public sealed class TenSeasons() : SeasonUnderTest(SeasonSize.Ten);
