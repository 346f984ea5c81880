using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>These tests want the machine to themselves: they measure, and they take all of it.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class DurabilityGroup
{
    public const string Name = "Durability";
}
