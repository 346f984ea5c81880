using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>One filled demo for all that only read it.</summary>
[CollectionDefinition(Name)]
public sealed class DemoShelf : ICollectionFixture<DemoFile>
{
    public const string Name = "The demo";
}
