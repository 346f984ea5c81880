namespace ProcessorDesk.Records;

/// <summary>Somebody around a job who is not its owner.</summary>
public sealed class JobPerson
{
    private JobPerson()
    {
    }

    public JobPerson(PersonRole role, string name, string? phone, string? postalAddress)
    {
        Role = role;
        Name = name.Trim();
        Phone = Texts.OrNull(phone);
        PostalAddress = Texts.OrNull(postalAddress);
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public PersonRole Role { get; private set; }

    public string Name { get; private set; } = "";

    public string? Phone { get; private set; }

    public string? PostalAddress { get; private set; }
}
