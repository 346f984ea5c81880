namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>The same, holding the made-up shop.</summary>
public sealed class DemoUnderTest() : ShopUnderTest(demo: true);
