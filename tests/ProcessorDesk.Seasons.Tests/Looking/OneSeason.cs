using ProcessorDesk.Seasons.Tests.Generating;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>Ten thousand jobs.</summary>
public sealed class OneSeason() : SeasonUnderTest(SeasonSize.One);
